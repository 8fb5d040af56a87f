namespace InstallPacket.Plans.Codes.Eu;

/// <summary>European practice. Distances from power wiring stand in national rules, which its tables do not hold: nothing is
/// guessed.</summary>
public sealed class EuCodeFamily() : CodeFamily("Codes/Eu")
{
    /// <inheritdoc/>
    public override CodeDefaults Defaults => CodeDefaults.Eu;

    /// <inheritdoc/>
    public override string PlanningModel => "p1812";

    internal override IWindCode Wind { get; } = new EurocodeWind();

    internal override IMastCode Mast { get; } = new PartialFactorMast();

    internal override IScrewCode Screws { get; } = new EurocodeScrews();

    internal override bool WeightAgainstGust => false;

    internal override bool ExemptsWallZone => true;
}
