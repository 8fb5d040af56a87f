namespace InstallPacket.Plans.Materials;

/// <summary>Lists what is cut: runs under their own numbers, then fly leads, bonding conductors and guys.</summary>
internal sealed class PiecePlanner(Job job, RoutingPlan routing, MountingPlan mounting, Workings work)
{
    private readonly List<PlacedPiece> _pieces = [];
    private int _next = routing.Runs.Count == 0 ? 1 : routing.Runs.Max(r => r.Number) + 1;

    public IReadOnlyList<PlacedPiece> Plan()
    {
        _pieces.AddRange(routing.Runs.Where(r => !r.Existing).Select(r =>
            new PlacedPiece(Run(r), job.Routing.Runs.First(j => j.Id == r.Id).At)));
        foreach (var outlet in job.Cabling.Chain.Where(e => e.Part is OutletPart && e.FlyLead.Metres > 0))
            Add($"fly lead {outlet.Id}", job.Cabling.FlyCable, outlet.FlyLead.Metres, End(outlet.Id, outlet.Point), "receiver",
                PieceKind.FlyLead, outlet.At);
        Bonding(job.Bonding);
        foreach (var (set, i) in (job.Mounting.Existing ? [] : mounting.LoadPath?.Guys ?? []).Select((s, i) => (s, i))) Guys(set, i + 1);
        return _pieces;
    }

    private void Bonding(BondingSection b)
    {
        var block = job.Cabling.Chain.FirstOrDefault(e => e.Part is GroundingBlockPart)?.Id ?? "grounding block";
        if (!b.MastExisting) Add("bonding of the mast", b.Conductor, b.MastLength.Metres, "mast", b.Rod is null ? "bonding connection" : "rod of the mast",
            PieceKind.Bonding, b.At);
        if (!b.ShieldExisting) Add("bonding of the shield", b.ShieldConductor, b.ShieldLength.Metres, block, "bonding connection", PieceKind.Bonding, b.At);
        if (b.Rod is { Existing: false, Jumper: { } jumper } rod) Add("jumper of the rod", jumper, rod.JumperLength.Metres, "rod of the mast",
            "bonding connection", PieceKind.Bonding, b.At);
    }

    private void Guys(GuySetPlan set, int ring)
    {
        var guys = job.Mounting.Guys!;
        var length = work.Apply(MountingFormulas.GuyCut, $"ring {ring}",
            Mounting.MountTerms.LoadPath($"guys[{ring}].length_m", set.LengthM), MountingFormulas.GuyEndsM);
        for (var i = 1; i <= set.Count; i++) Add($"guy {ring}.{i}", guys.Part, length, $"ring {ring}", "anchor", PieceKind.Guy, guys.At);
    }

    private void Add(string what, Part part, double lengthM, string from, string to, PieceKind kind, SourceSpan at)
    {
        if (lengthM > 0) _pieces.Add(new(new(_next++, what, part.Id, part.Name, lengthM, from, to) { Kind = kind }, at));
    }

    private static PiecePlan Run(RunPlan run) =>
        new(run.Number, run.Id, run.Cable, run.CableName, run.LengthM, End(run.FromElement, run.Path[0]), End(run.ToElement, run.Path[^1]));

    private static string End(string element, string point) => element.Length == 0 ? point : $"{element} ({point})";
}
