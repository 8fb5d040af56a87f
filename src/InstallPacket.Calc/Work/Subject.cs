using System.Globalization;
using System.Runtime.CompilerServices;

namespace InstallPacket.Calc.Work;

/// <summary>
/// What a formula is applied to: a name (<c>R3</c>), a set phrase (<c>upper support</c>), or names in a form (<c>kes-21 at O2</c>).
/// Written as an
/// interpolated string, it keeps form and names apart, so that another language can say it. Equal by its text.
/// </summary>
[InterpolatedStringHandler]
public sealed class Subject : IEquatable<Subject>
{
    private readonly List<Piece> _pieces;
    private string? _whole;

    /// <summary>Begins an interpolated subject; the compiler calls it.</summary>
    public Subject(int literalLength, int formattedCount) => _pieces = new(2 * formattedCount + (literalLength > 0 ? 1 : 0));

    /// <summary>Names and phrases in order: a literal of the form, or a name, which is a text or a subject of its own.</summary>
    public IReadOnlyList<(string? Literal, object? Name)> Pieces =>
        [.. _pieces.Select(p => p.Of is Subject of ? (null, of) : p.IsName ? (null, (object?)p.Text) : (p.Text, (object?)null))];

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
    public void AppendLiteral(string literal) => _pieces.Add(new(literal, false));

    /// <summary>A name; the compiler calls it.</summary>
    public void AppendFormatted(string name) => _pieces.Add(new(name, true));

    /// <summary>A subject in a subject; the compiler calls it.</summary>
    public void AppendFormatted(Subject subject)
    {
        ArgumentNullException.ThrowIfNull(subject);
        _pieces.Add(new(subject, true));
    }

    /// <summary>A number; the compiler calls it.</summary>
    public void AppendFormatted<T>(T number, string? format = null) where T : IFormattable => _pieces.Add(new(number, true, format));

    /// <inheritdoc/>
    public bool Equals(Subject? other) => other is not null && ToString() == other.ToString();

    /// <inheritdoc/>
    public override bool Equals(object? obj) => Equals(obj as Subject);

    /// <inheritdoc/>
    public override int GetHashCode() => ToString().GetHashCode(StringComparison.Ordinal);

    /// <summary>The text by which rows are told apart.</summary>
    public override string ToString() => _whole ??= string.Concat(_pieces.Select(p => p.Text));

    // Numbers are written out when somebody asks: most trials of a plan are never read.
    private readonly record struct Piece(object Of, bool IsName, string? Format = null)
    {
        public string Text => Of is IFormattable number ? number.ToString(Format, CultureInfo.InvariantCulture) : Of.ToString() ?? "";
    }
}
