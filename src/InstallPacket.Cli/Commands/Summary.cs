namespace InstallPacket.Cli.Commands;

/// <summary>Findings counted in words.</summary>
internal static class Summary
{
    public static string Count(IReadOnlyList<Finding> findings)
    {
        string Part(Severity severity, string one, string many)
        {
            var n = findings.Count(f => f.Severity == severity);
            return n == 0 ? "" : n == 1 ? $"1 {one}" : $"{n} {many}";
        }
        var parts = new[] { Part(Severity.Stop, "stop", "stops"), Part(Severity.Caution, "caution", "cautions"),
            Part(Severity.Note, "note", "notes") };
        var text = string.Join(", ", parts.Where(p => p.Length > 0));
        return text.Length == 0 ? "no findings" : text;
    }
}
