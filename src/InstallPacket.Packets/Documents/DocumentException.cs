namespace InstallPacket.Packets.Documents;

/// <summary>A document or theme cannot be written as it stands; the message says which and what to change.</summary>
public class DocumentException : Exception
{
    /// <summary>Says what is wrong.</summary>
    /// <param name="message">Document or file, and what to change.</param>
    public DocumentException(string message)
        : base(message)
    {
    }

    /// <summary>Says what is wrong and why.</summary>
    /// <param name="message">Document or file, and what to change.</param>
    /// <param name="cause">What was caught.</param>
    public DocumentException(string message, Exception cause)
        : base(message, cause)
    {
    }
}
