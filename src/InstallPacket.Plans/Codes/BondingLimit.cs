using InstallPacket.Calc.Bonding;
using InstallPacket.Calc.Quantities;

namespace InstallPacket.Plans.Codes;

/// <summary>One number that a code family asks of bonding.</summary>
/// <param name="Use">Which conductor (<c>mast</c>, <c>shield</c>, <c>jumper</c>) or which other quantity.</param>
/// <param name="Metal">Of which metal; empty where it does not matter.</param>
/// <param name="Value">The number as the document has it.</param>
/// <param name="Unit">Its unit.</param>
/// <param name="Document">Where it is written.</param>
/// <param name="Edition">Which edition.</param>
/// <param name="Provenance">How it is known.</param>
public sealed record BondingLimit(string Use, string Metal, double Value, string Unit, string Document, string Edition, string Provenance)
{
    /// <summary>A cross-section [mm2]: the value itself, or that of its gauge.</summary>
    public double Mm2 => Unit == "AWG" ? WireGauge.AreaM2(WireGauge.DiameterM(Value)) * 1e6 : Value;

    /// <summary>A length [m].</summary>
    public double Metres => UnitTable.For(Dimension.Length).Single(u => u.Name == Unit).Factor * Value;

    /// <summary>The size that it asks for.</summary>
    public BondSize Size => new(Value, Unit, Metal);
}
