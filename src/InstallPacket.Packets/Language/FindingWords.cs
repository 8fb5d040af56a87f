using InstallPacket.Jobs;

namespace InstallPacket.Packets.Language;

/// <summary>Speaks findings: section <c>findings</c> of the words, where a text of a case stands before that of the finding.</summary>
public static class FindingWords
{
    private const string Section = "findings.";

    /// <summary>What a finding says in the language and units of a job.</summary>
    /// <param name="finding">The finding.</param>
    /// <param name="words">Language and units.</param>
    /// <exception cref="WordsException">The language has no text for it, or a text names a value that the finding does not
    /// have.</exception>
    public static FindingText Spoken(Finding finding, JobWords words) =>
        new(Text(finding, "found", words), HasText(finding, "limit", words) ? Text(finding, "limit", words) : "",
            Text(finding, "remedy", words));

    private static bool HasText(Finding finding, string part, JobWords words) => words.Words.Has(IdOf(finding, part, words));

    private static string Text(Finding finding, string part, JobWords words) => words.Say(IdOf(finding, part, words), [.. finding.Values]);

    private static string IdOf(Finding finding, string part, JobWords words)
    {
        var ofCase = $"{Section}{finding.Id}.{finding.Case}.{part}";
        return finding.Case.Length > 0 && words.Words.Has(ofCase) ? ofCase : $"{Section}{finding.Id}.{part}";
    }
}
