using InstallPacket.Jobs;

namespace InstallPacket.Plans;

/// <summary>Lists what is cut: runs under their own numbers, then fly leads and bonding conductors.</summary>
internal sealed class PiecePlanner(Job job, RoutingPlan routing)
{
    public IReadOnlyList<PlacedPiece> Plan()
    {
        var next = routing.Runs.Count == 0 ? 1 : routing.Runs.Max(r => r.Number) + 1;
        var pieces = routing.Runs.Where(r => !r.Existing).Select(r => new PlacedPiece(Piece(r), job.Routing.Runs.First(j => j.Id == r.Id).At)).ToList();
        foreach (var outlet in job.Cabling.Chain.Where(e => e.Part.Kind == "outlet" && e.FlyLead.Metres > 0))
            pieces.Add(new(new(next++, $"fly lead {outlet.Id}", job.Cabling.FlyCable.Id, job.Cabling.FlyCable.Name, outlet.FlyLead.Metres, End(outlet.Id, outlet.Point), "receiver") { Kind = "fly lead" }, outlet.At));
        var block = job.Cabling.Chain.FirstOrDefault(e => e.Part.Kind == "grounding-block");
        foreach (var (what, from, length) in new[] { ("bonding of the mast", "mast", job.Bonding.MastLength), ("bonding of the shield", block?.Id ?? "grounding block", job.Bonding.ShieldLength) })
            if (length.Metres > 0)
                pieces.Add(new(new(next++, what, job.Bonding.Conductor.Id, job.Bonding.Conductor.Name, length.Metres, from, "bonding connection") { Kind = "bonding" }, job.Bonding.At));
        return pieces;
    }

    private static PiecePlan Piece(RunPlan run) => new(run.Number, run.Id, run.Cable, run.CableName, run.LengthM, End(run.FromElement, run.Path[0]), End(run.ToElement, run.Path[^1]));

    private static string End(string element, string point) => element.Length == 0 ? point : $"{element} ({point})";
}
