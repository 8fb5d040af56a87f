namespace InstallPacket.Jobs.Handover;

/// <summary>The keys of <c>prepared-by</c>, <c>customer</c> and <c>handover</c>.</summary>
internal static class HandoverKeys
{
    public static readonly GroupKind Party = new(
        new("name", new TextKind(80), "Name.", Required: true),
        new("address", new TextKind(200), "Address."),
        new("phone", new TextKind(40), "Telephone."),
        new("note", new TextKind(300), "Anything to know."));

    public static readonly GroupKind Section = new(
        new("existing-internet", new WordKind("none", "coax", "other"), "Whether an internet service uses coax in this house.", Default: "none"),
        new("words", new TextKind(600), "A word to the customer."));
}
