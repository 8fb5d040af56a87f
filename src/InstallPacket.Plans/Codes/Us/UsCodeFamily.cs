namespace InstallPacket.Plans.Codes.Us;

/// <summary>United States practice.</summary>
public sealed class UsCodeFamily() : CodeFamily("Codes/Us")
{
    /// <inheritdoc/>
    public override CodeDefaults Defaults => CodeDefaults.Us;

    /// <inheritdoc/>
    public override string PlanningModel => "itm";

    internal override IWindCode Wind { get; } = new AsceWind();

    internal override IMastCode Mast { get; } = new AllowableStressMast();

    internal override IScrewCode Screws { get; } = new NdsScrews();

    // The ultimate wind against the plain weight: the 0.6 of allowable stress stands on both sides.
    internal override bool WeightAgainstGust => true;

    internal override bool ExtensionLadders => true;
}
