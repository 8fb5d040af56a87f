using InstallPacket.Calc.Quantities;

namespace InstallPacket.Jobs.Catalogue;

/// <summary>The keys of <c>bonding</c>.</summary>
internal static class BondingKeys
{
    public static readonly GroupKind Section = new(
        new("connection", new TextKind(160), "Where the bonding conductor joins the earth of the building, as found by the survey.", Required: true),
        new("conductor", new ReferenceKind(ReferenceTarget.Part, "bonding"), "The conductor.", Required: true),
        new("mast-length", new QuantityKind(Dimension.Length, 0, 200, "m"), "Length of conductor from the mast to the connection.", Required: true),
        new("shield-length", new QuantityKind(Dimension.Length, 0, 200, "m"), "Length of conductor from the grounding block to the connection.", Required: true),
        new("by", new TextKind(120), "Who may do this work here.", Required: true),
        new("note", new TextKind(300), "A word to the crew."));
}
