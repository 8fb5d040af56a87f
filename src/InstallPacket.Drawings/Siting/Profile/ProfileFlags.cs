using InstallPacket.Plans;

namespace InstallPacket.Drawings.Siting.Profile;

/// <summary>The labels of a profile and the marks that they belong to.</summary>
internal sealed class ProfileFlags(SheetPlan plan, PathPlan path, ProfileScale scale)
{
    // Both ends and two edges have their labels before anything near the house has one.
    private const int MostNear = FlagTiers.Most - 4;
    private readonly UnitPrinter _print = plan.Print;

    /// <summary>How many obstructions are marked without a label, because a sheet holds only so many.</summary>
    public int Nameless => Math.Max(0, path.Obstructions.Count - MostNear);

    private ObstructionPlan[] Near => [.. path.Obstructions.Select(name => plan.Siting.Obstructions.First(o => o.Name == name))];

    public IReadOnlyList<Flag> Flags()
    {
        var flags = new List<Flag> { new(scale.At(0, path.AntennaM), plan.Say("profile.antenna"),
            [plan.Say("profile.above-sea", ("height", _print.Height(path.AntennaM)))]) };
        flags.AddRange(Near.Take(MostNear).Select(o =>
            new Flag(Top(o), o.Name, [Away(o), plan.Say("horizon.top", ("angle", StripWords.Angle(plan, o.AngleDeg)))], Ink: Ink.Warning)));
        flags.AddRange(path.Edges.Select(e =>
            new Flag(scale.At(e.DistanceKm, e.CurvedM), plan.Name(e.What),
            [plan.List([_print.Distance(e.DistanceKm), _print.Height(e.GroundM)])], Strong: true)));
        if (path.InSight)
            flags.Add(new(scale.At(path.Tightest.DistanceKm, path.Tightest.CurvedM), plan.Say("profile.tightest"),
                [plan.List([_print.Distance(path.Tightest.DistanceKm), _print.Height(path.Tightest.GroundM)])], Strong: true));
        flags.Add(new(scale.At(path.DistanceKm, path.TransmitterM), plan.Say("profile.transmitter"),
            [plan.Say("profile.above-sea", ("height", _print.Height(path.TransmitterM)))]));
        return flags;
    }

    private string Away(ObstructionPlan o) => o.Kind == ObstructionKind.Other ? plan.Say("away", ("distance", _print.Length(o.DistanceM)))
        : plan.Say("profile.kind-away", ("kind", plan.Word("obstruction", o.Kind)), ("distance", _print.Length(o.DistanceM)));

    /// <summary>What the labels point at, where the profile itself has no sign for it.</summary>
    public void Marks(SheetCanvas canvas)
    {
        foreach (var o in Near) canvas.Box(PaperBox.Around(Top(o), 0.9, 0.9), new(Ink.Warning, 0.3), Fill.Solid);
        foreach (var e in path.Edges) canvas.Ring(scale.At(e.DistanceKm, e.CurvedM), 1.1, new(Ink.Line, 0.4), Fill.Paper);
        if (!path.InSight) return;
        var (low, high) = (scale.At(path.Tightest.DistanceKm, path.Tightest.CurvedM),
            scale.At(path.Tightest.DistanceKm, path.Tightest.RayM));
        canvas.Line(new(Ink.Line, 0.5), low, high);
        canvas.Ring(low, 1.1, new(Ink.Line, 0.4), Fill.Paper);
    }

    // Near the house everything falls together on this scale: the mark stands at its height, the words tell the rest.
    private PaperPoint Top(ObstructionPlan o) => scale.At(o.DistanceM / 1000, path.Points[0].GroundM + o.HeightM);
}
