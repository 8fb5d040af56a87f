using InstallPacket.Calc.Quantities;

namespace InstallPacket.Jobs.Parts;

/// <summary>Reads the parts files below <c>_shared/parts</c>.</summary>
public static class PartLibraryReader
{
    private static readonly string[] Marks = ["read", "derived", "common practice", "memory"];

    /// <summary>Reads every <c>*.yaml</c> of the folder.</summary>
    /// <param name="files">The author's files.</param>
    /// <param name="findings">Receives what is wrong with them.</param>
    public static PartLibrary Read(IJobFiles files, FindingList findings)
    {
        var library = new PartLibrary();
        foreach (var path in files.List("_shared/parts").Where(p => p.EndsWith(".yaml", StringComparison.Ordinal)))
        {
            var file = files.Read(path, FileBounds.PartsBytes);
            if (!FileGate.Allows(file, FileBounds.PartsBytes, new(path, 0, 0), findings) || YamlGate.Load(file, findings) is not { } root) continue;
            foreach (var entry in new NodeChecker(findings).Group(root, PartCatalogue.File, "").Entries("parts"))
                if (Part(entry, findings) is { } part && !library.Add(part))
                    findings.Add(Severity.Stop, "duplicate-part", entry.At, $"the part `{part.Id}` is defined a second time (first in {library.Find(part.Id)!.At})",
                        "one definition a part", "rename one of the two");
        }
        return library;
    }

    /// <summary>The part that an entry describes, or null when it does not say what it is.</summary>
    internal static Part? Part(CheckedEntry entry, FindingList findings)
    {
        var g = entry.Group;
        if (!g.Has("kind") || !g.Has("name")) return null;
        var provenance = g.Entries("provenance").ToDictionary(e => e.Name, e => (string)e.Value, StringComparer.Ordinal);
        foreach (var figure in PartCatalogue.Figures.Where(f => g.Has(f) && !IsMarked(provenance, f)))
            findings.Add(Severity.Caution, "provenance-missing", entry.At, $"`{figure}` of part `{entry.Name}` does not say how it is known",
                "each figure has a mark: " + string.Join(", ", Marks), $"add `{figure}: \"memory: ...\"` or better under `provenance`");
        return new Part
        {
            Id = entry.Name,
            Kind = g.Get<string>("kind").Value,
            Name = g.Get<string>("name").Value,
            ByLength = g.Get<string>("unit").Value == "length",
            At = entry.At,
            Provenance = provenance,
            GainDbi = Curve(g, "gain"),
            BeamwidthDeg = Curve(g, "beamwidth"),
            FrontToBackDb = Number(g, "front-to-back"),
            FromMHz = Number(g, "from"),
            ToMHz = Number(g, "to"),
            SecondFromMHz = Number(g, "second-from"),
            SecondToMHz = Number(g, "second-to"),
            LengthM = Number(g, "length"),
            LossDb = Curve(g, "loss"),
            PortLossesDb = [.. g.Items<FrequencyCurve>("port-losses").Select(c => c.Value)],
            Outputs = g.Maybe<int>("outputs")?.Value ?? Math.Max(1, g.Items<FrequencyCurve>("port-losses").Count),
            IsolationDb = Curve(g, "isolation"),
            ReturnLossDb = Curve(g, "return-loss"),
            Intercept = Dbm(g, "intercept"),
            LeastSupplyV = Number(g, "least-supply"),
            LargestCurrentMa = Number(g, "largest-current"),
            ShortsPower = g.Get<string>("shorts-power").Value == "yes",
            TolerancePct = Number(g, "tolerance") ?? 0,
            LoopOhmPerKm = Number(g, "loop-resistance"),
            AmplificationDb = Curve(g, "amplification"),
            LeastAmplificationDb = Number(g, "least-amplification"),
            NoiseFigureDb = Curve(g, "noise-figure"),
            LargestOutput = Dbm(g, "largest-output"),
            SupplyV = Number(g, "supply"),
            DrawsMa = Number(g, "draws"),
            PowerPass = g.Get<string>("passes-power").Value,
            LeastLevel = Dbm(g, "least-level"),
            LargestLevel = Dbm(g, "largest-level"),
            AttenuationDbPer100M = Curve(g, "attenuation"),
            DiameterM = Number(g, "diameter"),
            WallM = Number(g, "wall"),
            Material = g.Maybe<string>("material")?.Value,
            Metal = g.Maybe<string>("metal")?.Value,
            CrossSectionMm2 = Number(g, "cross-section"),
            Gauge = g.Maybe<int>("gauge")?.Value,
            WindAreaM2 = Number(g, "wind-area"),
            Outline = [.. g.Items<CheckedGroup>("outline").Select(b => Bar(b.Value))],
            MassKg = Number(g, "mass"),
            StandOffM = Number(g, "stand-off"),
            PlateM = Number(g, "plate"),
            AcrossM = Number(g, "across"),
            EdgeM = Number(g, "edge"),
            FeetRadiusM = Number(g, "feet-radius"),
            RatedN = Number(g, "rated"),
            BreakingN = Number(g, "breaking"),
            Form = g.Maybe<string>("form")?.Value,
            ThreadM = Number(g, "thread"),
            BendRadiusM = Number(g, "bend-radius"),
            Connector = g.Maybe<string>("connector")?.Value,
            Price = Number(g, "price"),
            Pack = g.Maybe<int>("pack")?.Value,
            SparePct = Number(g, "spare"),
            TorqueNm = Number(g, "torque"),
        };
    }

    private static AntennaBar Bar(CheckedGroup g) => new(
        g.Get<int>("count").Value, g.Get<double>("width").Value, g.Get<double>("length").Value, g.Get<string>("form").Value == "round", g.Get<string>("faces").Value == "front");

    private static bool IsMarked(Dictionary<string, string> provenance, string figure) =>
        provenance.TryGetValue(figure, out var text) && Marks.Contains(text.Split(':', 2)[0].Trim());

    private static FrequencyCurve? Curve(CheckedGroup g, string key) => g.Maybe<FrequencyCurve>(key)?.Value;

    private static double? Number(CheckedGroup g, string key) => g.Maybe<double>(key)?.Value;

    private static Level? Dbm(CheckedGroup g, string key) => Number(g, key) is { } dbm ? Level.FromDbm(dbm) : null;
}
