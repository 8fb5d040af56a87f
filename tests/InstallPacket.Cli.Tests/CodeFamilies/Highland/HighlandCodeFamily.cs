using InstallPacket.Calc.Sources;
using InstallPacket.Plans.Codes.Eu;
using InstallPacket.Plans.Codes.Us;

namespace InstallPacket.Cli.Tests.CodeFamilies.Highland;

/// <summary>A family made up for the tests: this class and the tables beside it are all of it.</summary>
internal sealed class HighlandCodeFamily() : CodeFamily("CodeFamilies/Highland")
{
    public override CodeDefaults Defaults { get; } = new("highland", UnitFamily.Metric, PaperSize.A4, "en-GB");

    public override string Name => "Highland (made up)";

    public override string PlanningModel => "p1812";

    internal override IWindCode Wind { get; } = new HighlandWind();

    internal override IMastCode Mast { get; } = new PartialFactorMast();

    internal override IScrewCode Screws { get; } = new NdsScrews();

    internal override bool WeightAgainstGust => false;

    private sealed class HighlandWind : IWindCode
    {
        private static readonly Formula Pressure = new(
            "highland-pressure", "Made-up pressure", "q = V^2", new("q", "Pa", "pressure"), [new("V", "m/s", "speed")], "project-notes", "made up", Provenance.Derived)
        {
            Method = v => v[0] * v[0],
        };

        private static readonly Formula Load = new(
            "highland-load", "Made-up load", "Fd = 1.2 F", new("Fd", "N", "load"), [new("F", "N", "load")], "project-notes", "made up", Provenance.Derived)
        {
            Method = v => 1.2 * v[0],
        };

        public IReadOnlyList<string> Exposures { get; } = ["B", "IV"];

        public double DesignFactor => 1.2;

        public Row PressurePa(Workings work, DesignWind wind, double heightM) => work.Apply(Pressure, "antenna", wind.Speed());

        public Row Design(Workings work, Term load, Subject subject) => work.Apply(Load, subject, load);
    }
}
