using System.Reflection;

namespace InstallPacket.Cli.Commands;

/// <summary>The pages of <c>docs/findings</c>, which come with the program.</summary>
internal static class FindingPages
{
    private const string Prefix = "findings/";
    private static readonly Assembly Here = Assembly.GetExecutingAssembly();

    /// <summary>Identifiers of all findings that have a page.</summary>
    public static IReadOnlyList<string> Ids =>
        [.. Here.GetManifestResourceNames().Where(n => n.StartsWith(Prefix, StringComparison.Ordinal)).Select(n =>
            n[Prefix.Length..^3]).Order(StringComparer.Ordinal)];

    /// <summary>The page of a finding, or null.</summary>
    public static string? Of(string id)
    {
        using var stream = Here.GetManifestResourceStream($"{Prefix}{id}.md");
        return stream is null ? null : new StreamReader(stream).ReadToEnd();
    }

    /// <summary>All findings, a line each.</summary>
    public static string List() =>
        string.Concat(Ids.Select(id => $"{id,-28} {Of(id)!.Split('\n').First(l => l.Length > 0 && l[0] != '#')}\n"));
}
