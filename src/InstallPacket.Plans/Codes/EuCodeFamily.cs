namespace InstallPacket.Plans.Codes;

/// <summary>European practice.</summary>
public sealed class EuCodeFamily : CodeFamily
{
    /// <summary>The one instance.</summary>
    public static readonly EuCodeFamily Instance = new();

    /// <inheritdoc/>
    public override string Id => "eu";

    /// <inheritdoc/>
    public override string Name => "Europe (EN standards)";

    /// <inheritdoc/>
    public override string Language => "en-GB";

    /// <inheritdoc/>
    public override double? FallProtectionM => null;

    /// <inheritdoc/>
    public override double ClipSpacingM => 0.400;

    /// <inheritdoc/>
    public override double UprightClipSpacingM => 0.300;

    /// <inheritdoc/>
    // The distances stand in national rules, which the table does not hold: nothing is guessed.
    public override RuleLimit? FromPower(CableWay way) => null;

    /// <inheritdoc/>
    public override RuleLimit ConduitFill(int cables) => Limit(40, "conduit-fill");

    /// <inheritdoc/>
    public override string PlanningModel => "p1812";
}
