using InstallPacket.Calc.Quantities;
using InstallPacket.Plans;

namespace InstallPacket.Drawings.Siting.Profile;

/// <summary>A path profile in words.</summary>
internal sealed class ProfileWords(SheetPlan plan, PathPlan path)
{
    private readonly UnitPrinter _print = plan.Print;

    public string Site => UnitText.Number(path.Number, 0) + "\u00A0" + path.Site;

    public string Title => $"Path profile to site {Site}";

    /// <summary>What follows the name in the heading.</summary>
    public string Verdict => $", {_print.Distance(path.DistanceKm)}: {InSight}";

    public string Facts => $"Ground {(path.From == "measured" ? "as measured by the survey" : "by elevation tiles")}, ray at {UnitText.Write(path.FrequencyMhz, 0, "MHz")}; "
        + $"smallest clearance {Share} of the first Fresnel radius, at {_print.Distance(path.ClearAtKm)}";

    /// <summary>How far the earth rises over the chord.</summary>
    public string Bulge => _print.Height(path.Points.Max(p => p.BulgeM)) + " at most";

    private string InSight => path.InSight ? "in sight" : "ground stands in the ray";

    private string Share => UnitText.Number(path.ClearShare, 2);

    public static string Times(ProfileScale scale) => scale.Times == 1 ? "heights and distances at one scale" : $"heights drawn {UnitText.Number(scale.Times, 0)} times";

    public string Description(ProfileScale scale)
    {
        var words = new List<string>
        {
            $"Section of the ground from the house, on the left, to {path.Site}, {_print.Distance(path.DistanceKm)} away, on the curved earth; {Times(scale)}. {Capital(InSight)}.",
            $"{Facts}. The antenna is {_print.Height(path.AntennaM)} and the transmitter {_print.Height(path.TransmitterM)} above the sea; the earth bulges {Bulge}.",
        };
        if (path.Edges.Count > 0)
            words.Add("Edges that govern: " + string.Join("; ", path.Edges.Select(e => $"{e.What} at {_print.Distance(e.DistanceKm)}, {_print.Height(e.GroundM)} above the sea, {StripWords.Angle(e.AngleDeg)}")) + ".");
        if (path.Obstructions.Count > 0)
            words.Add("Near the house: " + string.Join("; ", path.Obstructions.Select(name => plan.Siting.Obstructions.First(o => o.Name == name))
                .Select(o => $"{o.Name} ({o.Kind}), {_print.Length(o.DistanceM)} away, its top {StripWords.Angle(o.AngleDeg)}")) + ".");
        return string.Join(" ", words);
    }

    private static string Capital(string text) => char.ToUpperInvariant(text[0]) + text[1..];
}
