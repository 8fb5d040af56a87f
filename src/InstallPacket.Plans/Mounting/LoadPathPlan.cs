namespace InstallPacket.Plans.Mounting;

/// <summary>What holds the mast, with every capacity beside its demand.</summary>
/// <param name="WeightN">Weight of antenna, mast and mount; null when a mass is unknown.</param>
/// <param name="StandOffM">Distance of the mast from the wall; null where it has none or it is unknown.</param>
/// <param name="Checks">Capacities and demands.</param>
/// <param name="Guys">Rings of guys from below; empty without guys.</param>
/// <param name="Ballast">Ballast; null when the mount does not stand by its weight.</param>
public sealed record LoadPathPlan(double? WeightN, double? StandOffM, IReadOnlyList<LoadPathCheck> Checks, IReadOnlyList<GuySetPlan> Guys,
    BallastPlan? Ballast)
{
    /// <summary>What the upper bracket takes; null where the mount has no brackets or they could not be checked.</summary>
    public BracketPlan? Bracket { get; init; }

    /// <summary>What the one plate takes; null where the mount has two brackets or it could not be checked.</summary>
    public PlateLoadPlan? Plate { get; init; }

    /// <summary>What a chimney takes; null without one.</summary>
    public ChimneyPlan? Chimney { get; init; }

    /// <summary>What a tripod takes; null without one.</summary>
    public TripodPlan? Tripod { get; init; }

    /// <summary>The push down a guyed mast; null without guys.</summary>
    public ColumnPlan? Column { get; init; }

    /// <summary>Figures of each screw in its place.</summary>
    public IReadOnlyList<ScrewPlan> Screws { get; init; } = [];

    /// <summary>Mass of the antennas; null when one is unknown.</summary>
    public double? AntennasKg { get; init; }

    /// <summary>Mass of the mast; null when that of an antenna or of the mount is unknown.</summary>
    public double? MastKg { get; init; }

    /// <summary>What is not proved, in words; empty when all of it is.</summary>
    public IReadOnlyList<string> Unproved { get; init; } = [];
}

/// <summary>A capacity against what it must bear. Of demand and capacity one pair is given, or neither where two loads act
/// together.</summary>
/// <param name="Id">Kebab-case identifier of the kind of check.</param>
/// <param name="What">What is checked.</param>
/// <param name="UseShare">Demand over capacity.</param>
/// <param name="Basis">Where the capacity comes from.</param>
/// <param name="Provenance">How it is known.</param>
public sealed record LoadPathCheck(string Id, string What, double UseShare, string Basis, string Provenance)
{
    /// <summary>Whether the demand is more than the capacity, or there is no capacity.</summary>
    public bool Exceeded => !(UseShare <= 1);

    /// <summary>Demand as a force; of a screw the resultant of pull and shear.</summary>
    public double? DemandN { get; init; }

    /// <summary>Capacity as a force.</summary>
    public double? BearsN { get; init; }

    /// <summary>Demand as a stress.</summary>
    public double? DemandPa { get; init; }

    /// <summary>Capacity as a stress.</summary>
    public double? BearsPa { get; init; }

    /// <summary>Demand as a moment.</summary>
    public double? DemandNm { get; init; }

    /// <summary>Capacity as a moment.</summary>
    public double? BearsNm { get; init; }

    /// <summary>Demand as a wind area.</summary>
    public double? DemandM2 { get; init; }

    /// <summary>Capacity as a wind area.</summary>
    public double? BearsM2 { get; init; }

    /// <summary>Pull of a fixing.</summary>
    public double? PullN { get; init; }

    /// <summary>Shear of a fixing.</summary>
    public double? ShearN { get; init; }
}

/// <summary>What the upper bracket takes.</summary>
/// <param name="ForceN">Force of the wind.</param>
/// <param name="WeightN">Weight that counts.</param>
/// <param name="ShareOfWeightN">Its share.</param>
/// <param name="Fixings">Fixings of the bracket.</param>
/// <param name="Sharing">Fixings that share the pull in wind along the wall.</param>
public sealed record BracketPlan(double ForceN, double WeightN, double ShareOfWeightN, int Fixings, int Sharing);

/// <summary>What the one plate of a mount takes.</summary>
/// <param name="ForceN">Force of the wind.</param>
/// <param name="WeightN">Weight that counts.</param>
/// <param name="MomentNm">Moment of the mast at the arm.</param>
/// <param name="TurnNm">Moment on the plate, wind away from the wall.</param>
/// <param name="TwistNm">Moment in the plane of the plate, wind along the wall.</param>
/// <param name="Holding">Fixings that hold: those of the job, as far as the plate has holes.</param>
/// <param name="InRow">Fixings of the upper row.</param>
/// <param name="Sharing">Fixings that share the pull in wind along the wall.</param>
/// <param name="Outer">Outer fixings.</param>
public sealed record PlateLoadPlan(
    double ForceN, double WeightN, double MomentNm, double TurnNm, double TwistNm, int Holding, int InRow, int Sharing, int Outer);

/// <summary>What a chimney takes.</summary>
/// <param name="PushN">Wind on antenna and free mast for the straps.</param>
/// <param name="ForceN">The same for the foot of the stack.</param>
/// <param name="DensityKgM3">Density that counts.</param>
public sealed record ChimneyPlan(double PushN, double ForceN, double DensityKgM3);

/// <summary>What a tripod takes.</summary>
/// <param name="Fixings">Fixings of a foot.</param>
/// <param name="AllFixings">Fixings of all feet.</param>
/// <param name="PushN">Push of the wind.</param>
public sealed record TripodPlan(int Fixings, int AllFixings, double PushN);

/// <summary>The push down a guyed mast.</summary>
/// <param name="PushN">From the wind, all rings.</param>
/// <param name="StillN">From the guys in still air.</param>
/// <param name="WeightN">Weight; 0 where a mass is unknown.</param>
/// <param name="SpanM">Largest distance between supports.</param>
/// <param name="UseShare">Push over capacity.</param>
public sealed record ColumnPlan(double PushN, double StillN, double WeightN, double SpanM, double UseShare);

/// <summary>A screw in its place.</summary>
/// <param name="Name">What it is.</param>
/// <param name="ThreadM">Thread in the timber.</param>
/// <param name="DepthM">Depth in the timber.</param>
/// <param name="BearingM">Bearing length of the yield modes.</param>
/// <param name="EndShare">Share that the distance to the end of the timber leaves.</param>
public sealed record ScrewPlan(string Name, double ThreadM, double DepthM, double BearingM, double EndShare);

/// <summary>A ring of guys.</summary>
/// <param name="RingM">Height of the ring above the foot of the mast.</param>
/// <param name="Count">Guys.</param>
/// <param name="RadiusM">Distance of the anchors from the mast.</param>
/// <param name="AngleDeg">Between guy and mast.</param>
/// <param name="PushN">Push of the mast at the ring.</param>
/// <param name="TensionN">Largest pull of a guy, still air included.</param>
/// <param name="LengthM">From ring to anchor, straight.</param>
public sealed record GuySetPlan(double RingM, int Count, double RadiusM, double AngleDeg, double PushN, double TensionN, double LengthM);

/// <summary>A base that stands by its weight.</summary>
/// <param name="SideM">Side of the square base.</param>
/// <param name="ForceN">Wind force on antenna and mast.</param>
/// <param name="LeverM">Its height above the roof.</param>
/// <param name="TurnN">Weight against overturning.</param>
/// <param name="SlideN">Weight against sliding.</param>
/// <param name="OwnN">Weight of base, mast and antenna.</param>
/// <param name="Blocks">Blocks on it.</param>
/// <param name="BlockKg">Mass of a block.</param>
/// <param name="TotalN">Weight with the blocks.</param>
/// <param name="RoofPa">Mean pressure on the roof.</param>
/// <param name="RoofBearsPa">What the roof bears; null when nobody said.</param>
public sealed record BallastPlan(
    double SideM, double ForceN, double LeverM, double TurnN, double SlideN, double OwnN, int Blocks, double BlockKg, double TotalN,
        double RoofPa, double? RoofBearsPa);
