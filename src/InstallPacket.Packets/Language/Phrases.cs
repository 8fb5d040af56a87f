using System.Text;

namespace InstallPacket.Packets.Language;

/// <summary>
/// Speaks the set phrases that the plan carries, such as <c>fly lead O1</c> or <c>the conductor from the mast</c>. A phrase is its own id
/// in the
/// section <c>phrases</c>; names of the job, beside it or alone, stay as they are.
/// </summary>
internal static class Phrases
{
    private const string Section = "phrases.";

    /// <summary>The text in the language.</summary>
    /// <param name="text">A phrase of the plan, a name of the job, or one with the other.</param>
    /// <param name="words">The language.</param>
    public static string Say(string text, Words words)
    {
        if (Exact(text, words) is { } whole) return whole;
        foreach (var between in new[] { ", ", ": " })
        {
            var at = text.LastIndexOf(between, StringComparison.Ordinal);
            if (at <= 0) continue;
            var (before, after) = (text[..at], text[(at + between.Length)..]);
            if (Exact(before, words) is null && Exact(after, words) is null) continue;
            return (Exact(before, words) ?? before) + between + (Exact(after, words) ?? after);
        }
        var blank = text.LastIndexOf(' ');
        return blank > 0 && Exact(text[..blank], words) is { } head ? head + text[blank..] : text;
    }

    private static string? Exact(string text, Words words)
    {
        var id = Section + Slug(text);
        return words.Has(id) ? words.Plain(id) : null;
    }

    internal static string Slug(string text)
    {
        var slug = new StringBuilder(text.Length);
        foreach (var c in text)
        {
            if (char.IsAsciiLetterOrDigit(c)) slug.Append(char.ToLowerInvariant(c));
            else if (slug.Length > 0 && slug[^1] != '-') slug.Append('-');
        }
        return slug.ToString().TrimEnd('-');
    }
}
