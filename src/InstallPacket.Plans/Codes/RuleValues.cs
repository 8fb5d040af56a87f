namespace InstallPacket.Plans.Codes;

/// <summary>Limits of rules as values of findings; the words say them by <c>finding-parts.rule</c> and
/// <c>finding-parts.source</c>.</summary>
internal static class RuleValues
{
    /// <summary>The rule of a limit.</summary>
    public static FindingValues Source(this CodeLimit limit) => Of(limit.Document, limit.Edition, limit.Provenance);

    /// <summary>The rule of a limit of bonding.</summary>
    public static FindingValues Source(this BondingLimit limit) => Of(limit.Document, limit.Edition, limit.Provenance);

    /// <summary>The rule of a window of levels.</summary>
    public static FindingValues Source(this OutletWindow window) => Of(window.Document, window.Edition, window.Provenance);

    /// <summary>A rule by its document.</summary>
    /// <param name="document">Where it is written.</param>
    /// <param name="edition">Which edition; <c>-</c> where there is none.</param>
    /// <param name="provenance">How it is known.</param>
    public static FindingValues Of(string document, string edition, string provenance) =>
        new(("document", document), ("edition", edition), ("provenance", provenance));
}
