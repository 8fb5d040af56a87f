using Fluid;
using InstallPacket.Jobs;

namespace InstallPacket.Packets.Language;

/// <summary>One text of a language. It is parsed once, and not at all when it names no value.</summary>
/// <param name="id">Its id.</param>
/// <param name="text">The text as written.</param>
/// <param name="at">Where it stands.</param>
internal sealed class WordText(string id, string text, SourceSpan at)
{
    private readonly bool _plain = !text.Contains('{', StringComparison.Ordinal);
    private volatile IFluidTemplate? _template;

    public string Id => id;

    public SourceSpan At => at;

    /// <summary>The text when it names no value; null otherwise.</summary>
    public string? Plain => _plain ? text : null;

    /// <summary>The text as written.</summary>
    public string Written => text;

    /// <summary>The parsed text.</summary>
    /// <exception cref="WordsException">It is not Liquid.</exception>
    public IFluidTemplate Template => _template ??=
        PacketParser.Instance.Parse(text, out var error) ?? throw new WordsException(at, $"'{id}': {error}");

    /// <summary>An error of rendering with the place of this text.</summary>
    /// <param name="cause">What was caught.</param>
    public WordsException Wrong(Exception cause) => new(at, $"'{id}': {cause.Message}", cause);

    /// <summary>Whether an exception says that the text asks for what is not there.</summary>
    public static bool IsMistake(Exception e) => e is UnknownNameException or FluidException or InvalidOperationException
        or InvalidDataException or FormatException or DivideByZeroException or ArgumentException or OverflowException or InvalidCastException
        or OutOfMemoryException;
}
