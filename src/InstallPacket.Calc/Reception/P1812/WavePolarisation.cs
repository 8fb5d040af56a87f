namespace InstallPacket.Calc.Reception.P1812;

/// <summary>Plane of the electric field. Of a mixed or circular wave, take the component that the antenna receives.</summary>
public enum WavePolarisation
{
    /// <summary>Across.</summary>
    Horizontal,

    /// <summary>Upright.</summary>
    Vertical,
}
