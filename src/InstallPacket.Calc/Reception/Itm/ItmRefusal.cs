namespace InstallPacket.Calc.Reception.Itm;

/// <summary>Why the terrain model gives no figure. The numbers are the codes of the published model, except the last.</summary>
public enum ItmRefusal
{
    /// <summary>There is a figure.</summary>
    None = 0,

    /// <summary>Transmitting antenna not 0.5 to 3000 m above ground.</summary>
    TxHeight = 1000,

    /// <summary>Receiving antenna not 0.5 to 3000 m above ground.</summary>
    RxHeight = 1001,

    /// <summary>No such climate.</summary>
    Climate = 1002,

    /// <summary>Share of time not between 0 and 100 %.</summary>
    Time = 1003,

    /// <summary>Share of locations not between 0 and 100 %.</summary>
    Location = 1004,

    /// <summary>Share of situations not between 0 and 100 %.</summary>
    Situation = 1005,

    /// <summary>Refractivity at sea level not 250 to 400 N-units.</summary>
    Refractivity = 1008,

    /// <summary>Frequency not 20 to 20,000 MHz.</summary>
    Frequency = 1009,

    /// <summary>No such polarisation.</summary>
    Polarisation = 1010,

    /// <summary>Permittivity of the ground below 1.</summary>
    Permittivity = 1011,

    /// <summary>Conductivity of the ground not above 0.</summary>
    Conductivity = 1012,

    /// <summary>Ground that the diffraction series does not know: the imaginary part of its impedance reaches the real part.</summary>
    GroundImpedance = 1013,

    /// <summary>No such mode of variability.</summary>
    Variability = 1014,

    /// <summary>Effective earth radius not 4000 to 13,333 km.</summary>
    EarthRadius = 1016,

    /// <summary>Surface refractivity below 150 N-units: mean ground above 4800 m.</summary>
    SurfaceRefractivityLow = 1021,

    /// <summary>Surface refractivity above 400 N-units.</summary>
    SurfaceRefractivityHigh = 1022,

    /// <summary>
    /// An inner quantity is not a number (vertical polarisation over sea water with a close high horizon). The published program prints
    /// the free-space loss
    /// there, behind a 260 m wall; this one refuses. The code is ours.
    /// </summary>
    Undefined = 2000,
}
