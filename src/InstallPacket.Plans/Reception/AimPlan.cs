namespace InstallPacket.Plans.Reception;

/// <summary>Where the antenna points.</summary>
/// <param name="TrueDeg">True bearing.</param>
/// <param name="MagneticDeg">Compass reading, or null.</param>
/// <param name="CompassPoint">Sixteen-point name.</param>
/// <param name="ChosenBy"><c>job</c> or <c>program</c>.</param>
/// <param name="LandmarkTurnDeg">Turn from the landmark to the aim, clockwise positive; null without landmark.</param>
/// <param name="BeamwidthDeg">Half-power beamwidth at the highest wanted channel.</param>
public sealed record AimPlan(double TrueDeg, double? MagneticDeg, string CompassPoint, string ChosenBy, double? LandmarkTurnDeg,
    double BeamwidthDeg)
{
    /// <summary>Whether the aim is straight at the landmark, to half a degree.</summary>
    public bool AtLandmark => LandmarkTurnDeg is > -0.5 and < 0.5;

    /// <summary>The best single heading: most wanted stations held, then the largest smallest margin.</summary>
    public double BestDeg { get; init; }

    /// <summary>Wanted stations that the aim holds with the demanded chance.</summary>
    public IReadOnlyList<string> Held { get; init; } = [];

    /// <summary>Wanted stations that it does not hold.</summary>
    public IReadOnlyList<string> NotHeld { get; init; } = [];

    /// <summary>Headings within which all held stations stay held; null when none is held.</summary>
    public AimArc? Arc { get; init; }

    /// <summary>The weakest wanted station at the aim; null without wanted stations.</summary>
    public WeakestAtAim? Weakest { get; init; }

    /// <summary>What a second antenna or a rotor would add; null when nothing.</summary>
    public SecondAim? Second { get; init; }
}

/// <summary>The weakest wanted station at the aim, before the chain.</summary>
/// <param name="Station">The station.</param>
/// <param name="SignalDbm">Power at the terminals.</param>
/// <param name="NoiseDbm">Noise there, disturbers counted in.</param>
public sealed record WeakestAtAim(string Station, double SignalDbm, double NoiseDbm);

/// <summary>A further antenna.</summary>
/// <param name="AntennaId">Its name in the chain.</param>
/// <param name="AntennaPart">Part name.</param>
/// <param name="AntennaName">What it is.</param>
/// <param name="Aim">Where it points.</param>
/// <param name="Stations">Wanted stations that come through it.</param>
public sealed record AntennaAim(string AntennaId, string AntennaPart, string AntennaName, AimPlan Aim, IReadOnlyList<string> Stations);

/// <summary>The headings within which nothing held is lost, clockwise from one end to the other.</summary>
/// <param name="FromDeg">True bearing of the anticlockwise end.</param>
/// <param name="ToDeg">True bearing of the clockwise end.</param>
/// <param name="FromMagneticDeg">Compass reading of the anticlockwise end, or null.</param>
/// <param name="ToMagneticDeg">Compass reading of the clockwise end, or null.</param>
/// <param name="WidthDeg">Width; 360 when every heading does.</param>
/// <param name="Ends">What each wanted station gains or loses at the ends.</param>
public sealed record AimArc(double FromDeg, double ToDeg, double? FromMagneticDeg, double? ToMagneticDeg, double WidthDeg,
    IReadOnlyList<AimEnd> Ends)
{
    /// <summary>The anticlockwise end of the narrow band within which no received channel loses a decibel.</summary>
    public double HereFromDeg { get; init; }

    /// <summary>Its clockwise end.</summary>
    public double HereToDeg { get; init; }

    /// <summary>Whether every heading keeps all.</summary>
    public bool AllRound => WidthDeg >= 360;
}

/// <summary>Change of one station's level at the ends of the arc, against the aim.</summary>
/// <param name="Station">The station.</param>
/// <param name="Name">What the viewer calls it.</param>
/// <param name="MarginDb">Its margin at the aim, at the noisiest outlet.</param>
/// <param name="AtFromDb">Change at the anticlockwise end.</param>
/// <param name="AtToDb">Change at the clockwise end.</param>
public sealed record AimEnd(string Station, string Name, double MarginDb, double AtFromDb, double AtToDb);

/// <summary>A second heading that holds what the first does not.</summary>
/// <param name="TrueDeg">True bearing.</param>
/// <param name="MagneticDeg">Compass reading, or null.</param>
/// <param name="Stations">The stations it adds.</param>
public sealed record SecondAim(double TrueDeg, double? MagneticDeg, IReadOnlyList<string> Stations);
