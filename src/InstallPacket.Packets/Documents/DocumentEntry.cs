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

/// <summary>Which packets have a document.</summary>
public enum DocumentUse
{
    /// <summary>Every packet.</summary>
    All,

    /// <summary>Those of surveyed jobs.</summary>
    Job,

    /// <summary>Those of desk studies.</summary>
    Study,
}

/// <summary>A document of a packet.</summary>
/// <param name="Id">Its name, which is the name of its files.</param>
/// <param name="Title">Id of the text that is its title.</param>
/// <param name="Reader">Id of the text that says who reads it; null for the entry page itself.</param>
/// <param name="Template">Template that writes it.</param>
/// <param name="Formats">Forms in which it is written.</param>
/// <param name="For">Jobs whose packets have it.</param>
public sealed record DocumentEntry(string Id, string Title, string? Reader, string Template, IReadOnlyList<DocumentFormat> Formats,
    DocumentUse For = DocumentUse.All)
{
    /// <summary>Whether the firm's logo stands on it.</summary>
    public bool Logo { get; init; }

    /// <summary>Whether the packet of a job has it.</summary>
    /// <param name="study">Whether the job is a desk study.</param>
    public bool Serves(bool study) => For == DocumentUse.All || (For == DocumentUse.Study) == study;
}
