namespace InstallPacket.Jobs.Stations;

/// <summary>Polarisation of a transmitter.</summary>
public enum Polarisation
{
    /// <summary>Horizontal.</summary>
    Horizontal,

    /// <summary>Vertical.</summary>
    Vertical,

    /// <summary>Both.</summary>
    Both,
}
