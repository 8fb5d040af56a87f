namespace InstallPacket.Jobs.Layers;

/// <summary>The receiver, cable and outlet that a house of a code family usually has, for jobs that name none.</summary>
/// <param name="has">Whether the library has a part.</param>
internal sealed class UsualParts(Func<string, bool> has)
{
    private static readonly SourceSpan BuiltIn = new("built in", 0, 0);
    private static readonly string Cabling = JobKeys.Cabling.Name;

    /// <summary>The job with them.</summary>
    /// <param name="job">The job with what the firm says.</param>
    /// <param name="family">The code family.</param>
    public YamlMap Over(YamlMap job, string family)
    {
        if (TreeEditor.Below(job, Cabling) is not YamlMap || LayerFile.Read($"usual-parts-{family}.yaml") is not { } usual
            || TreeEditor.Below(usual, Cabling) is not YamlMap parts) return job;
        var tree = new TreeEditor(job);
        foreach (var (key, value) in parts.Entries)
            if (value is YamlScalar part && has(part.Value)) tree.AddIfAbsent(part with { At = BuiltIn }, Cabling, key.Value);
        return tree.Root;
    }
}
