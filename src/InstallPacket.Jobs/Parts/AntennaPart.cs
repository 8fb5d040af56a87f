using InstallPacket.Calc.Quantities;

namespace InstallPacket.Jobs.Parts;

/// <summary>An antenna.</summary>
public sealed record AntennaPart : ChainPart
{
    internal AntennaPart(Entry<CheckedGroup> entry) : base(entry)
    {
        var g = entry.Value;
        GainDbi = g.Maybe(AntennaPartKeys.Gain)?.Value;
        BeamwidthDeg = g.Maybe(AntennaPartKeys.Beamwidth)?.Value;
        FrontToBackDb = g.Maybe(AntennaPartKeys.FrontToBack)?.Value;
        LengthM = g.Maybe(PartKeys.Length)?.Value;
        WindAreaM2 = g.Maybe(AntennaPartKeys.WindArea)?.Value;
        Outline = [.. g.Items(AntennaPartKeys.Outline).Select(b => new AntennaBar(b.Value))];
        MassKg = g.Maybe(PartKeys.Mass)?.Value;
    }

    /// <inheritdoc/>
    public override PartKind Kind => PartKind.Antenna;

    /// <summary>Gain on the axis [dBi].</summary>
    public FrequencyCurve? GainDbi { get; init; }

    /// <summary>Half-power beamwidth [deg].</summary>
    public FrequencyCurve? BeamwidthDeg { get; init; }

    /// <summary>Front-to-back ratio [dB].</summary>
    public double? FrontToBackDb { get; init; }

    /// <summary>Its length [m].</summary>
    public double? LengthM { get; init; }

    /// <summary>Effective area that the wind meets [m2].</summary>
    public double? WindAreaM2 { get; init; }

    /// <summary>Its bars; empty when not stated.</summary>
    public IReadOnlyList<AntennaBar> Outline { get; init; }

    /// <summary>Mass [kg].</summary>
    public double? MassKg { get; init; }
}

/// <summary>The keys of an antenna.</summary>
public static class AntennaPartKeys
{
    private static readonly KeyList Keys = new(ChainKeys.Group, PartKeys.Length, PartKeys.Mass);

    /// <summary>Antenna: gain on the axis.</summary>
    public static readonly Key<FrequencyCurve> Gain = Keys.Optional(
        "gain", new CurveKind(Dimension.AntennaGain, -20, 30, "dBi"), "Antenna: gain on the axis.");

    /// <summary>Antenna: half-power beamwidth in the horizontal plane; the pattern rule holds below 180 deg.</summary>
    public static readonly Key<FrequencyCurve> Beamwidth = Keys.Optional(
        "beamwidth", new CurveKind(Dimension.Angle, 5, 179, "deg"),
        "Antenna: half-power beamwidth in the horizontal plane; the pattern rule holds below 180 deg.");

    /// <summary>Antenna: how far the pattern falls behind.</summary>
    public static readonly Key<double> FrontToBack = Keys.Optional(
        "front-to-back", new QuantityKind(Dimension.Ratio, 0, 40, "dB"), "Antenna: how far the pattern falls behind.");

    /// <summary>Antenna: effective area that the wind meets, drag included, the larger of both directions.</summary>
    public static readonly Key<double> WindArea = Keys.Optional(
        "wind-area", new QuantityKind(Dimension.WindArea, 0.001, 5, "m2"),
        "Antenna: effective area that the wind meets, drag included, the larger of both directions.");

    /// <summary>Antenna: its bars, from which the area is calculated when the maker states none.</summary>
    public static readonly Key<IReadOnlyList<Sourced<CheckedGroup>>> Outline = Keys.Optional(
        "outline", new ListKind<CheckedGroup>(BarKeys.Group, 1, 40),
        "Antenna: its bars, from which the area is calculated when the maker states none.");

    internal static GroupKind Group => Keys.Group;
}
