using InstallPacket.Calc.Quantities;

namespace InstallPacket.Jobs.Parts;

/// <summary>The holes of a plate.</summary>
public sealed record PlateHoles
{
    internal PlateHoles(CheckedGroup g)
    {
        Count = g.Get(HolesKeys.Count);
        Pattern = g.Maybe(HolesKeys.Height) is { } height ? new(g.Maybe(HolesKeys.Width)?.Value ?? 0, height.Value) : null;
    }

    /// <summary>Fixings that the plate takes.</summary>
    public int Count { get; init; }

    /// <summary>How they lie; null when not stated.</summary>
    public HolePattern? Pattern { get; init; }
}

/// <summary>How the holes of a plate lie.</summary>
/// <param name="WidthM">Level distance between the outer holes [m]; 0 when they stand in one upright line.</param>
/// <param name="HeightM">Upright distance between the outer holes [m].</param>
public readonly record struct HolePattern(double WidthM, double HeightM);

/// <summary>The arm of a mount.</summary>
public sealed record MountArm
{
    internal MountArm(CheckedGroup g)
    {
        LengthM = g.Get(ArmKeys.Length);
        TiltDeg = g.Get(ArmKeys.Tilt);
    }

    /// <summary>From the plate to the middle of the mast [m].</summary>
    public double LengthM { get; init; }

    /// <summary>How far it rises above the level [deg].</summary>
    public double TiltDeg { get; init; }
}

/// <summary>What the maker of a mount allows.</summary>
public sealed record MountRating
{
    internal MountRating(CheckedGroup g)
    {
        MomentNm = g.Maybe(RatingKeys.Moment)?.Value;
        WindAreaM2 = g.Maybe(RatingKeys.WindArea)?.Value;
    }

    /// <summary>Largest moment of the mast [N m]; null when not stated.</summary>
    public double? MomentNm { get; init; }

    /// <summary>Largest wind area of the antennas [m2]; null when not stated.</summary>
    public double? WindAreaM2 { get; init; }
}

/// <summary>The keys of <c>holes</c>.</summary>
internal static class HolesKeys
{
    private static readonly KeyList Keys = new();

    public static readonly Key<int> Count = Keys.Required("count", new IntegerKind(1, 20), "Fixings that the plate takes.");

    public static readonly Key<double> Width = Keys.Optional(
        "width", new QuantityKind(Dimension.Length, 0.01, 1, "m"),
        "Level distance between the outer holes; absent when they stand in one upright line.");

    public static readonly Key<double> Height = Keys.Optional(
        "height", new QuantityKind(Dimension.Length, 0.01, 1, "m"), "Upright distance between the outer holes.");

    public static GroupKind Group => Keys.Group;
}

/// <summary>The keys of <c>arm</c>.</summary>
internal static class ArmKeys
{
    private static readonly KeyList Keys = new();

    public static readonly Key<double> Length = Keys.Required(
        "length", new QuantityKind(Dimension.Length, 0, 2, "m"), "From the plate to the middle of the mast, along the arm.");

    public static readonly Key<double> Tilt = Keys.Default(
        "tilt", new QuantityKind(Dimension.Angle, -60, 80, "deg"),
        "Bent arm: how far it rises above the level on its way to the mast; below 0 it hangs.", "0 deg");

    public static GroupKind Group => Keys.Group;
}

/// <summary>The keys of <c>rating</c>.</summary>
internal static class RatingKeys
{
    private static readonly KeyList Keys = new();

    public static readonly Key<double> Moment = Keys.Optional(
        "moment", new QuantityKind(Dimension.Torque, 1, 20000, "N m"), "The largest moment of the mast at its clamp that its maker allows.");

    public static readonly Key<double> WindArea = Keys.Optional(
        "wind-area", new QuantityKind(Dimension.WindArea, 0.001, 20, "m2"),
        "The largest effective wind area of antennas that its maker allows.");

    public static GroupKind Group => Keys.Group;
}

/// <summary>The keys of <c>own-mast</c>: those of a mast, and its length.</summary>
internal static class OwnMastKeys
{
    private static readonly KeyList Keys = new(null, PartKeys.Diameter, PartKeys.Length, MastPartKeys.Wall, MastPartKeys.Material);

    public static GroupKind Group => Keys.Group;
}
