using InstallPacket.Jobs;

namespace InstallPacket.Packets.Language;

/// <summary>A words file cannot be used as it stands, or a text is asked for that it does not have.</summary>
public sealed class WordsException : DocumentException
{
    /// <summary>Says where and what.</summary>
    /// <param name="at">File, line and column.</param>
    /// <param name="message">What is wrong and what to change.</param>
    /// <param name="cause">What was caught, if anything.</param>
    public WordsException(SourceSpan at, string message, Exception? cause = null)
        : base($"{at}: {message}", cause!)
    {
    }

    private WordsException(string id, string message)
        : base(message) => Id = id;

    /// <summary>The id that has no text; null when something else is wrong.</summary>
    public string? Id { get; }

    /// <summary>A text is asked for that the language does not have.</summary>
    internal static WordsException NoText(string id, string language, IEnumerable<string> known) =>
        new(id, $"the language {language} has no text '{id}'{WordsFile.Near(id, known)}");
}
