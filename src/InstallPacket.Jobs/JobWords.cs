namespace InstallPacket.Jobs;

/// <summary>The units that a packet prints.</summary>
public enum UnitFamily
{
    /// <summary>Feet and inches, miles, pound-force inches, degrees Fahrenheit.</summary>
    Us,

    /// <summary>Metres, kilometres, newton metres, degrees Celsius.</summary>
    Metric,
}

/// <summary>Paper of the PDF.</summary>
public enum PaperSize
{
    /// <summary>US letter.</summary>
    Letter,

    /// <summary>ISO A4.</summary>
    A4,
}

/// <summary>The unit in which levels are printed.</summary>
public enum LevelUnit
{
    /// <summary>Decibels over a microvolt.</summary>
    DBuV,

    /// <summary>Decibels over a millivolt.</summary>
    DBmV,

    /// <summary>Decibels over a milliwatt.</summary>
    DBm,
}
