namespace InstallPacket.Plans.Bonding;

/// <summary>The size of a bonding conductor as its document or its part states it; the words say it by <c>sizes.conductor</c>.</summary>
/// <param name="Value">A gauge or a cross-section; null when the part states none.</param>
/// <param name="Unit"><c>AWG</c> or <c>mm2</c>; empty when no size is known.</param>
/// <param name="Metal">Of which metal; empty when that is not known.</param>
public sealed record BondSize(double? Value, string Unit, string Metal)
{
    /// <summary>The size as values of a text.</summary>
    public FindingValues Values() => new(("value", Value), ("unit", Unit), ("metal", Metal));
}
