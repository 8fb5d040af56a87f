namespace InstallPacket.Plans.Codes;

/// <summary>Limits of rules as values of findings; the words say them by <c>finding-parts.rule</c> and <c>finding-parts.size</c>.</summary>
internal static class RuleValues
{
    /// <summary>The rule of a limit.</summary>
    public static FindingValues Source(this RuleLimit limit) => Rule(limit.Rule.Document, limit.Rule.Edition, limit.Rule.Provenance);

    /// <summary>The rule of a limit of bonding.</summary>
    public static FindingValues RuleOf(this BondingLimit limit) => Rule(limit.Document, limit.Edition, limit.Provenance);

    /// <summary>The size that a limit of bonding asks for.</summary>
    public static FindingValues Size(this BondingLimit limit) => new(("value", limit.Value), ("unit", limit.Unit), ("metal", limit.Metal));

    private static FindingValues Rule(string document, string edition, string provenance) =>
        new(("document", document), ("edition", edition), ("provenance", provenance));
}
