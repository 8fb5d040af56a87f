using InstallPacket.Calc.Quantities;

namespace InstallPacket.Jobs.Parts;

/// <summary>A bracket, a base, a tripod or straps.</summary>
public sealed record MountPart : Part
{
    internal MountPart(Entry<CheckedGroup> entry) : base(entry)
    {
        var g = entry.Value;
        MassKg = g.Maybe(PartKeys.Mass)?.Value;
        StandOffM = g.Maybe(MountPartKeys.StandOff)?.Value;
        PlateM = g.Maybe(MountPartKeys.Plate)?.Value;
        AcrossM = g.Maybe(MountPartKeys.Across)?.Value;
        EdgeM = g.Maybe(MountPartKeys.Edge)?.Value;
        FeetRadiusM = g.Maybe(MountPartKeys.FeetRadius)?.Value;
        RatedN = g.Maybe(MountPartKeys.Rated)?.Value;
        BreakingN = g.Maybe(PartKeys.Breaking)?.Value;
        Plates = g.Maybe(MountPartKeys.Plates)?.Value;
        Holes = g.Maybe(MountPartKeys.Holes) is { } holes ? new PlateHoles(holes.Value) : null;
        Arm = g.Maybe(MountPartKeys.Arm) is { } arm ? new MountArm(arm.Value) : null;
        Rating = g.Maybe(MountPartKeys.Rating) is { } rating && g.Wrote(MountPartKeys.Rating)
            ? new MountRating(rating.Value) : null;
        OwnMast = g.Maybe(MountPartKeys.OwnMast) is { } own && g.Wrote(MountPartKeys.OwnMast)
            ? new MastPart(entry, own.Value) : null;
    }

    /// <inheritdoc/>
    public override PartKind Kind => PartKind.Mount;

    /// <summary>Mass [kg].</summary>
    public double? MassKg { get; init; }

    /// <summary>Distance of the mast from the wall [m].</summary>
    public double? StandOffM { get; init; }

    /// <summary>Thickness of its plate [m].</summary>
    public double? PlateM { get; init; }

    /// <summary>Level distance between the fixings of one bracket [m].</summary>
    public double? AcrossM { get; init; }

    /// <summary>Level distance from the fixings to the edge of the plate [m].</summary>
    public double? EdgeM { get; init; }

    /// <summary>Radius of its feet [m].</summary>
    public double? FeetRadiusM { get; init; }

    /// <summary>Largest force at its upper support by its maker [N].</summary>
    public double? RatedN { get; init; }

    /// <summary>Breaking strength [N].</summary>
    public double? BreakingN { get; init; }

    /// <summary>Plates that are fixed to the house, 1 or 2; null when not stated.</summary>
    public int? Plates { get; init; }

    /// <summary>The holes of a plate; null when not stated.</summary>
    public PlateHoles? Holes { get; init; }

    /// <summary>The arm from the plate to the mast; null when not stated.</summary>
    public MountArm? Arm { get; init; }

    /// <summary>What its maker allows; null when not stated.</summary>
    public MountRating? Rating { get; init; }

    /// <summary>The mast that comes with it; null when it has none.</summary>
    public MastPart? OwnMast { get; init; }
}

/// <summary>The keys of a mount.</summary>
public static class MountPartKeys
{
    private static readonly KeyList Keys = new(PartKeys.Common, PartKeys.Mass, PartKeys.Breaking);

    /// <summary>Mount: how far it holds the mast from the wall.</summary>
    public static readonly Key<double> StandOff = Keys.Optional(
        "stand-off", new QuantityKind(Dimension.Length, 0, 2, "m"), "Mount: how far it holds the mast from the wall.");

    /// <summary>Mount: thickness of the plate that the fixings go through.</summary>
    public static readonly Key<double> Plate = Keys.Optional(
        "plate", new QuantityKind(Dimension.Length, 0.0005, 0.03, "m"), "Mount: thickness of the plate that the fixings go through.");

    /// <summary>Mount: level distance between the fixings of one bracket; absent when they stand in one upright line.</summary>
    public static readonly Key<double> Across = Keys.Optional(
        "across", new QuantityKind(Dimension.Length, 0.01, 1, "m"),
        "Mount: level distance between the fixings of one bracket; absent when they stand in one upright line.");

    /// <summary>Mount: level distance from the fixings to the edge of the plate, when they stand in one upright line.</summary>
    public static readonly Key<double> Edge = Keys.Optional(
        "edge", new QuantityKind(Dimension.Length, 0.005, 0.5, "m"),
        "Mount: level distance from the fixings to the edge of the plate, when they stand in one upright line.");

    /// <summary>Tripod: distance from its middle to a foot.</summary>
    public static readonly Key<double> FeetRadius = Keys.Optional(
        "feet-radius", new QuantityKind(Dimension.Length, 0.1, 3, "m"), "Tripod: distance from its middle to a foot.");

    /// <summary>Mount: the largest force at its upper support that its maker allows.</summary>
    public static readonly Key<double> Rated = Keys.Optional(
        "rated", new QuantityKind(Dimension.Force, 1, 100000, "N"), "Mount: the largest force at its upper support that its maker allows.");

    /// <summary>Mount: plates that are fixed to the house.</summary>
    public static readonly Key<int> Plates = Keys.Optional(
        "plates", new IntegerKind(1, 2),
        "Mount: plates that are fixed to the house: 1 with an arm that holds the mast, or 2 brackets; 2 when absent.");

    /// <summary>Mount: the holes of a plate.</summary>
    public static readonly Key<CheckedGroup> Holes = Keys.Optional("holes", HolesKeys.Group, "Mount: the holes of a plate.");

    /// <summary>Mount: its arm from the plate to the mast.</summary>
    public static readonly Key<CheckedGroup> Arm = Keys.Optional("arm", ArmKeys.Group, "Mount: its arm from the plate to the mast.");

    /// <summary>Mount: the mast that comes with it.</summary>
    public static readonly Key<CheckedGroup> OwnMast = Keys.Optional(
        "own-mast", OwnMastKeys.Group, "Mount: the mast or tube that comes with it; a job then names no mast.");

    /// <summary>Mount: what its maker allows.</summary>
    public static readonly Key<CheckedGroup> Rating = Keys.Optional("rating", RatingKeys.Group, "Mount: what its maker allows.");

    internal static GroupKind Group => Keys.Group;
}
