using CsCheck;
using InstallPacket.Calc.Quantities;
using InstallPacket.Tests;

namespace InstallPacket.Plans.Tests;

/// <summary>Whatever figures the keys allow, the planner gives a plan with findings, never an error of its own.</summary>
public class MountRangeTests
{
    private static readonly MountKind[] Kinds = Enum.GetValues<MountKind>();
    private static readonly FixingForm[] Forms = Enum.GetValues<FixingForm>();
    private static readonly GuyPart Guy = (GuyPart)DemoJobs.Load().Parts().Find("guy-wire-5")!;
    private static readonly MountPart OnePlate = (MountPart)DemoJobs.Load().Parts().Find("eave-bracket-one-plate")!;
    private static readonly string[] Timbers = ["c14", "c24", "spruce-pine-fir", "unknown-softwood", "mixed-oak"];

    [Theory]
    [InlineData("alder-lane")]
    [InlineData("quay-loft")]
    public void Any_figures_within_the_ranges_of_the_keys_give_a_plan(string id)
    {
        var jobs = DemoJobs.Load();
        var parts = jobs.Parts();
        var job = new JobReader(jobs, parts).Read(id).Job!;
        // Stations add nothing here and cost time.
        job = job with { Siting = job.Siting with { Terrain = null }, Reception = job.Reception with { Stations = [], Want = [] } };
        Gen.Double[0, 1].Array[56].Sample(dice => PlanJson.Text(PlanJson.Tree(Planner.Plan(job with { Mounting = Section(job, new Dice(dice)) }, parts, null, []))).Length > 0, iter: 80);
    }

    private static MountingSection Section(Job job, Dice d)
    {
        var at = job.Mounting.At;
        var mast = d.Between(0.2, 30);
        var fixing = job.Mounting.Fixings[0].Part with { Form = d.Of(Forms), DiameterM = d.Between(0.001, 0.2), LengthM = d.Between(0.001, 30), ThreadM = d.Between(0.005, 0.5) };
        return job.Mounting with
        {
            Kind = d.Of(Kinds),
            Mount = job.Mounting.Mount with { MassKg = d.Between(0.001, 500), StandOffM = d.Between(0.001, 2), PlateM = d.Between(0.0005, 0.03), AcrossM = d.Even() ? d.Between(0.01, 1) : null, EdgeM = d.Between(0.005, 0.5), FeetRadiusM = d.Between(0.1, 3), RatedN = d.Between(1, 1e5), BreakingN = d.Between(100, 2e5), Plates = d.Even() ? 1 : 2, Holes = d.Even() ? OnePlate.Holes! with { Count = (int)d.Between(1, 20), Pattern = d.Even() ? new(d.Even() ? d.Between(0.01, 1) : 0, d.Between(0.01, 1)) : null } : null, Arm = d.Even() ? OnePlate.Arm! with { LengthM = d.Between(0.0001, 2), TiltDeg = d.Between(0.001, 80) - (d.Even() ? 60 : 0) } : null },
            Plate = d.Even() ? new(d.Even() ? d.Between(0.01, 1) : 0, d.Between(0.01, 1)) : null,
            Mast = job.Mounting.Mast with { DiameterM = d.Between(0.002, 0.2), WallM = d.Between(0.0005, 0.02) },
            MastLength = Length.FromMetres(mast),
            FreeLength = Length.FromMetres(d.Between(0.1, 20)),
            Spacing = d.Even() ? Length.FromMetres(d.Between(0.05, 10)) : null,
            Wind = job.Mounting.Wind! with { SpeedMS = d.Between(5, 120) },
            Fixings = [new Fixing(fixing, (int)d.Between(1, 200), Length.FromMetres(d.Between(0.0001, 0.03)), "it", at)
            {
                Timber = new(d.Of(Timbers), at), GapM = d.Between(0.0001, 0.3), EndM = new(d.Between(0.001, 10), at), EdgeM = new(d.Between(0.001, 1), at), PullN = d.Between(1, 2e5), ShearN = d.Between(1, 2e5),
            }],
            Guys = d.Even() ? new GuySection(Guy with { BreakingN = d.Between(100, 2e5) }, d.Between(1, 2e4), [new(d.Between(0.3, 60), d.Even() ? 3 : 4, d.Between(0.1, 60), at)], "anchor", d.Between(1, 2e5), null, at) : null,
            Ballast = new BallastSection(d.Between(0.2, 5), d.Between(1, 200), d.Even() ? (int)d.Between(1, 500) : null, d.Even() ? d.Between(0.1, 0.8) : null, d.Even() ? d.Between(100, 5e4) : null, null, at),
            Chimney = new ChimneySection(d.Between(0.2, 3), d.Between(0.1, 6), d.Between(0.1, 5), new(ChimneyState.Sound, at), new(Permission.Yes, at), at),
            WorkHeight = Length.FromMetres(d.Between(0.01, 100)),
            LadderLoadKg = new(d.Between(30, 300), at),
        };
    }

    // Takes one die after the other; figures are spread evenly over their orders of magnitude, ends included.
    private sealed class Dice(double[] dice)
    {
        private int _next;

        public double Between(double least, double most) => dice[_next++ % dice.Length] switch
        {
            < 0.1 => least,
            > 0.9 => most,
            var x => least * Math.Pow(most / least, (x - 0.1) / 0.8),
        };

        public bool Even() => dice[_next++ % dice.Length] < 0.5;

        public T Of<T>(T[] words) => words[Math.Min(words.Length - 1, (int)(dice[_next++ % dice.Length] * words.Length))];
    }
}
