namespace InstallPacket.Calc.Quantities;

/// <summary>What a written value measures. The stored unit of each is stated here once.</summary>
public enum Dimension
{
    /// <summary>Length, stored in metres.</summary>
    Length,

    /// <summary>Angle, stored in degrees.</summary>
    Angle,

    /// <summary>Signal level, stored in dBm at 75 ohm.</summary>
    Level,

    /// <summary>Gain, loss or margin, stored in dB.</summary>
    Ratio,

    /// <summary>Antenna gain, stored in dBi.</summary>
    AntennaGain,

    /// <summary>Cable loss per length, stored in dB per 100 m.</summary>
    Attenuation,

    /// <summary>Frequency, stored in MHz.</summary>
    Frequency,

    /// <summary>Temperature, stored in degrees Celsius.</summary>
    Temperature,

    /// <summary>Torque, stored in newton metres.</summary>
    Torque,

    /// <summary>Voltage, stored in volts.</summary>
    Voltage,

    /// <summary>Current, stored in milliamperes.</summary>
    Current,

    /// <summary>Radiated power, stored in kilowatts on a half-wave dipole (ERP).</summary>
    RadiatedPower,

    /// <summary>Mass, stored in kilograms.</summary>
    Mass,

    /// <summary>Time, stored in hours.</summary>
    Duration,

    /// <summary>Share, stored in per cent.</summary>
    Share,

    /// <summary>Resistance of both conductors per length, stored in ohms per kilometre.</summary>
    LoopResistance,

    /// <summary>Speed of wind, stored in metres per second.</summary>
    Speed,

    /// <summary>Area that the wind meets, stored in square metres.</summary>
    WindArea,

    /// <summary>Wire cross-section, stored in square millimetres.</summary>
    Area,

    /// <summary>Base unit newton.</summary>
    Force,

    /// <summary>Base unit pascal.</summary>
    Pressure,

    /// <summary>Resistivity of soil, stored in ohm metres.</summary>
    Resistivity,

    /// <summary>Flashes to ground, stored per square kilometre and year.</summary>
    FlashDensity,
}
