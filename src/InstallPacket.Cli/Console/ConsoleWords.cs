using System.Collections.Concurrent;
using InstallPacket.Packets.Language;

namespace InstallPacket.Cli.Console;

/// <summary>The units in which the findings of a job are printed.</summary>
/// <param name="Family">Feet or metres.</param>
/// <param name="LevelUnit">The unit of levels.</param>
internal readonly record struct JobUnits(UnitFamily Family, LevelUnit LevelUnit)
{
    /// <summary>When there is no job, or it could not be read so far.</summary>
    public static readonly JobUnits Unknown = new(UnitFamily.Metric, LevelUnit.DBuV);
}

/// <summary>
/// What the console says: the program's own English, whatever the theme or the job, so that a mistake in a firm's words hides no finding.
/// </summary>
internal static class ConsoleWords
{
    private const string Language = "en-US";
    private static readonly Lazy<Words> English = new(() => new WordsShelf(InstalledData.ThemeFiles).Words(Language));
    private static readonly ConcurrentDictionary<JobUnits, JobWords> Known = new();

    /// <summary>What a finding says.</summary>
    public static FindingText Spoken(Finding finding, JobUnits units) =>
        FindingWords.Spoken(finding, Known.GetOrAdd(units, u => new JobWords(English.Value, u.Family == UnitFamily.Us, u.LevelUnit)));
}
