namespace InstallPacket.Jobs.Bonding;

/// <summary>What a power conductor carries.</summary>
public enum PowerCircuit
{
    /// <summary>At most 250 V.</summary>
    UpTo250V,

    /// <summary>More than 250 V.</summary>
    Above250V,
}
