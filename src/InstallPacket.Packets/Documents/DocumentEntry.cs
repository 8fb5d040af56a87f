namespace InstallPacket.Packets.Documents;

/// <summary>A form in which a document is written.</summary>
public enum DocumentFormat
{
    /// <summary>A page for the browser.</summary>
    Html,

    /// <summary>A tagged PDF.</summary>
    Pdf,

    /// <summary>Markdown.</summary>
    Md,
}

/// <summary>A document of every packet.</summary>
/// <param name="Id">Its name, which is the name of its files.</param>
/// <param name="Title">Id of the text that is its title.</param>
/// <param name="Reader">Id of the text that says who reads it; null for the entry page itself.</param>
/// <param name="Template">Template that writes it.</param>
/// <param name="Formats">Forms in which it is written.</param>
public sealed record DocumentEntry(string Id, string Title, string? Reader, string Template, IReadOnlyList<DocumentFormat> Formats);
