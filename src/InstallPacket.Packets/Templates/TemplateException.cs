using System.Globalization;

namespace InstallPacket.Packets.Templates;

/// <summary>A template cannot be parsed or rendered; the message leads with file and line, as an editor likes it.</summary>
public sealed class TemplateException : DocumentException
{
    /// <summary>Says where and what.</summary>
    /// <param name="file">The template in the theme.</param>
    /// <param name="line">Its line, or null when it is not known.</param>
    /// <param name="message">What is wrong.</param>
    /// <param name="cause">What was caught.</param>
    public TemplateException(string file, int? line, string message, Exception cause)
        : base(line is { } n ? string.Create(CultureInfo.InvariantCulture, $"{file}:{n}: {message}") : $"{file}: {message}", cause)
    {
        File = file;
        Line = line;
    }

    /// <summary>The template in the theme.</summary>
    public string File { get; }

    /// <summary>Its line, or null when it is not known.</summary>
    public int? Line { get; }
}
