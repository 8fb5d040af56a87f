using System.Globalization;
using System.Text;
using InstallPacket.Calc.Work;

namespace InstallPacket.Packets.Language;

/// <summary>
/// Speaks what a row of the workings is about. The form of a subject is its id in the section <c>subjects</c>, its names numbered:
/// <c>kes-21 at O2</c> is said by <c>subjects.1-at-2</c>, which sees the names as <c>a</c>, <c>b</c> and so on.
/// </summary>
internal static class SubjectWords
{
    private const string Section = "subjects.";
    private const string Task = Section + "task-1";
    private static readonly string[] Names = ["a", "b", "c", "d", "e"];

    /// <summary>The subject in the language of the words; a form that has no text keeps its own.</summary>
    public static string Say(Subject subject, JobWords words)
    {
        if (subject.Pieces is [(null, string name)]) return words.Name(name);
        var id = IdOf(subject);
        if (id == Task) return words.Words.Plain("tasks." + subject.Pieces[^1].Name);
        var spoken = subject.Pieces.Where(p => p.Name is not null).Select(p => p.Name is Subject inner ? Say(inner, words)
            : words.Name((string)p.Name!)).ToArray();
        if (words.Words.Has(id) && spoken.Length <= Names.Length) return words.Say(id,
            [.. spoken.Select((s, i) => (Names[i], (object?)s))]);
        var next = 0;
        return string.Concat(subject.Pieces.Select(p => p.Literal ?? spoken[next++]));
    }

    /// <summary>The id of the form.</summary>
    public static string IdOf(Subject subject)
    {
        var id = new StringBuilder(Section);
        var number = 0;
        foreach (var (literal, _) in subject.Pieces)
        {
            if (id.Length > Section.Length && id[^1] != '-') id.Append('-');
            if (literal is null) id.Append(CultureInfo.InvariantCulture, $"{++number}");
            else id.Append(Phrases.Slug(literal));
        }
        return id.ToString().TrimEnd('-');
    }
}
