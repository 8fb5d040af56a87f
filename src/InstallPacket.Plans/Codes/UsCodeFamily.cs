namespace InstallPacket.Plans.Codes;

/// <summary>United States practice.</summary>
public sealed class UsCodeFamily : CodeFamily
{
    /// <summary>The one instance.</summary>
    public static readonly UsCodeFamily Instance = new();

    /// <inheritdoc/>
    public override string Id => "us";

    /// <inheritdoc/>
    public override string Name => "United States (NEC, OSHA)";

    /// <inheritdoc/>
    public override string Language => "en-US";

    /// <inheritdoc/>
    public override double? FallProtectionM => 6 * 0.3048;

    /// <inheritdoc/>
    public override double ClipSpacingM => 0.610;

    /// <inheritdoc/>
    public override double UprightClipSpacingM => 0.610;

    /// <inheritdoc/>
    // In a raceway the distances do not apply.
    public override RuleLimit? FromPower(CableWay way) => way switch
    {
        CableWay.Outside or CableWay.Span => Limit(0.6096, "lead-in-low"),
        CableWay.Buried => Limit(0.3048, "lead-in-buried"),
        CableWay.Conduit => null,
        CableWay.Attic or CableWay.Wall or CableWay.CrawlSpace => Limit(0.0508, "lead-in-indoor"),
    };

    /// <inheritdoc/>
    public override RuleLimit ConduitFill(int cables) => Limit(cables switch { 1 => 53, 2 => 31, _ => 40 }, "conduit-fill");

    /// <inheritdoc/>
    public override string PlanningModel => "itm";
}
