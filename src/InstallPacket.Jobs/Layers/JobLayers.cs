namespace InstallPacket.Jobs.Layers;

/// <summary>
/// Puts a job together from what is said about it: the firm's file, the kits that it names, the job file itself. The nearest to the job
/// wins, and every value keeps the place where it was said. What comes out is a job as if everything had been written into one file.
/// </summary>
/// <param name="files">The author's files.</param>
/// <param name="findings">Receives what is wrong.</param>
/// <param name="has">Whether the library has a part.</param>
internal sealed class JobLayers(IJobFiles files, FindingList findings, Func<string, bool> has)
{
    /// <summary>Whether the job that was loaded is a desk study.</summary>
    public bool IsStudy { get; private set; }

    /// <summary>The whole job; null when its file cannot be read.</summary>
    /// <param name="path">The job file.</param>
    public YamlMap? Load(string path)
    {
        var file = files.Read(path, FileBounds.JobBytes);
        if (!FileGate.Allows(file, FileBounds.JobBytes, new(path, 0, 0), findings) || YamlGate.Load(file, findings) is not { } job) return null;
        var uses = Uses(job);
        var firm = Firm(TreeEditor.Below(job, JobKeys.Firm.Name) as YamlScalar);
        var units = UnitChoice.FamilyOf(firm is null ? job : TreeMerge.Over(job, firm), CodeDefaults.BuiltIn);
        var pieces = new List<YamlMap>();
        var outs = new Dictionary<string, string>(StringComparer.Ordinal);
        foreach (var (name, given) in uses)
            if (Piece(name, given, units, outs) is { } piece) pieces.Add(piece);
        var whole = Without(Without(job, JobKeys.Kits.Name), JobKeys.Import.Name);
        if (pieces.Count > 0) whole = TreeMerge.Over(whole, Together(pieces));
        IsStudy = DeskStudy.Is(whole);
        if (firm is not null) whole = TreeMerge.Over(whole, Without(firm, JobKeys.Import.Name));
        var family = (TreeEditor.Below(whole, JobKeys.Code.Name) as YamlScalar)?.Value ?? "";
        whole = IsStudy ? DeskStudy.Filled(whole, family) : new UsualParts(has).Over(whole, family);
        string FedBy(string element) => outs.GetValueOrDefault(element, element);
        if (outs.Count > 0) whole = new KitNames(FedBy, n => n, n => n, definitions: false).In(whole, KeyCatalogue.Job);
        return new ShortForms(findings).Spell(whole);
    }

    private YamlMap? Firm(YamlScalar? named)
    {
        if (named is null || FirmFile.Names(files) is var known && known.Contains(named.Value)) return FirmFile.Read(files, named?.Value, findings)?.Says;
        findings.Add(Severity.Stop, "unknown-reference", "firm", named.At, ("path", JobKeys.Firm.Name), ("name", named.Value),
            ("near", NearestWord.Of(named.Value, known)), ("known", known.Take(NameResolver.MostNames)), ("more", known.Count > NameResolver.MostNames));
        return null;
    }

    private List<(YamlScalar Name, YamlMap Given)> Uses(YamlMap job)
    {
        var uses = new List<(YamlScalar, YamlMap)>();
        if (job.Entries.FirstOrDefault(e => e.Key.Value == JobKeys.Kits.Name).Value is not { } kits) return uses;
        new NodeChecker(findings).Check(kits, JobKeys.Kits.Kind, JobKeys.Kits.Name);
        if (kits is YamlMap map) uses.AddRange(map.Entries.Where(e => e.Value is YamlMap).Select(e => (e.Key, (YamlMap)e.Value)));
        return uses;
    }

    private YamlMap? Piece(YamlScalar name, YamlMap given, UnitFamily? units, Dictionary<string, string> outs)
    {
        if (given.Entries.FirstOrDefault(e => e.Key.Value == KitUseKeys.Kit.Name) is not { Key: not null } said)
        {
            findings.Add(Severity.Stop, "missing-key", "key", name.At, ("path", $"kits.{name.Value}.kit"), ("key", KitUseKeys.Kit.Name),
                ("meaning", KitUseKeys.Kit.Meaning), ("expected", Expected.Of(KitUseKeys.Kit.Kind)));
            return null;
        }
        if (said.Value is not YamlScalar kitName || Kit.Read(files, new(kitName.Value, kitName.At), findings) is not { } kit) return null;
        if (kit.Gives.Entries.FirstOrDefault(e => e.Key.Value == JobKeys.Kits.Name).Key is { } inner)
        {
            findings.Add(Severity.Stop, "kit-in-kit", inner.At, ("kit", kit.Name));
            return null;
        }
        if (kit.Out is { } output) outs[name.Value] = $"{name.Value}-{output.Value}";
        return new KitFiller(kit, name, given, units, findings).Piece();
    }

    // Two kits that say one thing differently leave nobody to decide.
    private YamlMap Together(List<YamlMap> pieces)
    {
        var all = pieces[0];
        foreach (var piece in pieces.Skip(1)) all = TreeMerge.Over(all, piece, Twice);
        return all;
    }

    private void Twice(string path, YamlNode near, YamlNode far)
    {
        if (near is YamlScalar a && far is YamlScalar b && a.Value == b.Value) return;
        findings.Add(Severity.Stop, "kits-differ", near.At, ("path", path), ("value", (near as YamlScalar)?.Value), ("other", (far as YamlScalar)?.Value),
            ("place", far.At.ToString()));
    }

    private static YamlMap Without(YamlMap map, string key) => map with { Entries = [.. map.Entries.Where(e => e.Key.Value != key)] };
}
