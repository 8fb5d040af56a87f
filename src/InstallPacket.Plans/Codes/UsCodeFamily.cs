namespace InstallPacket.Plans;

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
    public override double? FallProtectionM => 6 * 0.3048;

    /// <inheritdoc/>
    public override double ClipSpacingM => 0.610;

    /// <inheritdoc/>
    public override string PlanningModel => "itm";
}
