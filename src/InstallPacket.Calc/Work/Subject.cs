using System.Globalization;
using System.Runtime.CompilerServices;
using System.Text;

namespace InstallPacket.Calc.Work;

/// <summary>
/// What a formula is applied to: a name (<c>R3</c>), a set phrase (<c>upper support</c>), or names in a form (<c>kes-21 at O2</c>).
/// Written as an
/// interpolated string, it keeps form and names apart, so that another language can say it. Equal by its text.
/// </summary>
[InterpolatedStringHandler]
public sealed class Subject : IEquatable<Subject>
{
    private readonly StringBuilder _text;
    private readonly List<(string? Literal, object? Name)> _pieces;
    private string? _whole;

    /// <summary>Begins an interpolated subject; the compiler calls it.</summary>
    public Subject(int literalLength, int formattedCount)
    {
        _text = new(literalLength + 12 * formattedCount);
        _pieces = new(2 * formattedCount + 1);
    }

    /// <summary>Names and phrases in order: a literal of the form, or a name, which is a text or a subject of its own.</summary>
    public IReadOnlyList<(string? Literal, object? Name)> Pieces => _pieces;

    /// <summary>A name or a set phrase.</summary>
    public static implicit operator Subject(string name) => FromString(name);

    /// <summary>A name or a set phrase.</summary>
    public static Subject FromString(string name)
    {
        var subject = new Subject(0, 1);
        subject.AppendFormatted(name);
        return subject;
    }

    /// <summary>A piece of the form; the compiler calls it.</summary>
    public void AppendLiteral(string literal)
    {
        _text.Append(literal);
        _pieces.Add((literal, null));
    }

    /// <summary>A name; the compiler calls it.</summary>
    public void AppendFormatted(string name)
    {
        _text.Append(name);
        _pieces.Add((null, name));
    }

    /// <summary>A subject in a subject; the compiler calls it.</summary>
    public void AppendFormatted(Subject subject)
    {
        ArgumentNullException.ThrowIfNull(subject);
        _text.Append(subject._text);
        _pieces.Add((null, subject));
    }

    /// <summary>A number; the compiler calls it.</summary>
    public void AppendFormatted<T>(T number, string? format = null) where T : IFormattable =>
        AppendFormatted(number.ToString(format, CultureInfo.InvariantCulture));

    /// <inheritdoc/>
    public bool Equals(Subject? other) => other is not null && ToString() == other.ToString();

    /// <inheritdoc/>
    public override bool Equals(object? obj) => Equals(obj as Subject);

    /// <inheritdoc/>
    public override int GetHashCode() => ToString().GetHashCode(StringComparison.Ordinal);

    /// <summary>The text by which rows are told apart.</summary>
    public override string ToString() => _whole ??= _text.ToString();
}
