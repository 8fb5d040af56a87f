using CsCheck;
using InstallPacket.Calc.Reception;
using InstallPacket.Calc.Siting;
using InstallPacket.Plans;

namespace InstallPacket.Drawings.Tests;

public class PathProfileTests
{
    public static TheoryData<string, int> Paths => new(Demo.Ids.SelectMany(job => Demo.Plan(job).Siting.Paths.Select(p => (job, p.Number))));

    [Theory]
    [MemberData(nameof(Paths))]
    public void The_ray_runs_straight_from_the_antenna_to_the_transmitter(string job, int number)
    {
        var (path, sheet) = Draw(job, number);
        var scale = Scale(path);
        var ray = sheet.Lines(Ink.Accent, 0.9).First().Points;
        Assert.Equal(2, ray.Count);
        Assert.Equal(scale.X(0), ray[0].X, 6);
        Assert.Equal(scale.X(path.DistanceKm), ray[1].X, 6);
        // Both ends by their heights above the sea: the difference on the sheet is the difference in the plan.
        Assert.Equal((path.TransmitterM - path.AntennaM) * scale.MmPerM, ray[0].Y - ray[1].Y, 6);
    }

    [Theory]
    [MemberData(nameof(Paths))]
    public void Edges_and_the_tightest_spot_lie_on_the_ground_line(string job, int number)
    {
        var (path, sheet) = Draw(job, number);
        var ground = Ground(sheet);
        var marks = sheet.Shapes.OfType<Circle>().Where(c => Math.Abs(c.RadiusMm - 1.1) < 1e-9).ToArray();
        Assert.Equal(path.InSight ? 1 : path.Edges.Count, marks.Length);
        Assert.All(marks, m => Assert.Contains(ground, p => Polar.Distance(p, m.Centre) < 1e-6));
        var scale = Scale(path);
        Assert.All(path.Edges, e => Assert.Contains(marks, m => Math.Abs(m.Centre.X - scale.X(e.DistanceKm)) < 1e-6));
    }

    [Theory]
    [MemberData(nameof(Paths))]
    public void The_ground_stands_with_the_bulge_of_the_earth_against_the_ray(string job, int number)
    {
        var (path, sheet) = Draw(job, number);
        var scale = Scale(path);
        var (ground, ray) = (Ground(sheet), sheet.Lines(Ink.Accent, 0.9).First().Points);
        for (var i = 0; i < path.Points.Count; i++)
        {
            var p = path.Points[i];
            var at = ground[i + 1]; // the line begins under the house, left of the antenna
            var onRay = ray[0].Y + (ray[1].Y - ray[0].Y) * (at.X - ray[0].X) / (ray[1].X - ray[0].X);
            Assert.Equal((p.RayM - p.GroundM - p.BulgeM) * scale.MmPerM, at.Y - onRay, 6);
        }
    }

    [Theory]
    [MemberData(nameof(Paths))]
    public void The_zone_lies_on_both_sides_of_the_ray_at_the_fresnel_radius(string job, int number)
    {
        var (path, sheet) = Draw(job, number);
        var scale = Scale(path);
        var upper = sheet.Lines(Ink.Accent, 0.25).First().Points;
        for (var i = 0; i < path.Points.Count; i++) Assert.Equal(scale.Y(path.Points[i].RayM) - path.Points[i].FresnelM * scale.MmPerM, Shifted(sheet, path, upper[i].Y), 6);
        var lower = sheet.Lines(Ink.Accent, 0.55).Where(l => l.Points.Count > 2).SelectMany(l => l.Points).ToArray();
        var clear = path.Points.Where(p => p.RayM - p.FresnelM - p.BulgeM > scale.LowM).ToArray();
        Assert.NotEmpty(clear);
        Assert.All(clear, p => Assert.Contains(lower, l => Math.Abs(l.X - scale.X(p.DistanceKm)) < 1e-6 && Math.Abs(Shifted(sheet, path, l.Y) - scale.Y(p.RayM - p.FresnelM)) < 1e-6));
    }

    [Fact]
    public void Ground_in_the_ray_is_drawn_heavy_exactly_where_it_stands_above_the_ray()
    {
        var (path, sheet) = Draw("alder-lane", 2);
        var ray = sheet.Lines(Ink.Accent, 0.9).First().Points;
        double OnRay(double x) => ray[0].Y + (ray[1].Y - ray[0].Y) * (x - ray[0].X) / (ray[1].X - ray[0].X);
        var heavy = sheet.Lines(Ink.Warning, 1.4).Where(l => l.Points.Count > 2).ToArray();
        Assert.NotEmpty(heavy);
        foreach (var line in heavy)
        {
            Assert.All(line.Points, p => Assert.True(p.Y <= OnRay(p.X) + 1e-6));
            Assert.Equal(OnRay(line.Points[^1].X), line.Points[^1].Y, 6);
        }
        var above = path.Points.Count(p => p.CurvedM > p.RayM);
        Assert.Equal(above, heavy.Sum(l => l.Points.Count(p => p.Y < OnRay(p.X) - 1e-6)));
    }

    [Fact]
    public void Heading_tells_site_distance_and_verdict()
    {
        Assert.Contains(Draw("alder-lane", 1).Sheet.Captions(), c => c.Text == "1\u00A0Kestrel Ridge, 25.5\u00A0mi: the ground blocks the ray");
        Assert.Contains(Draw("brook-terrace", 1).Sheet.Captions(), c => c.Text == "1\u00A0Vika Quarry, 14.3\u00A0km: in sight");
        Assert.Contains(Draw("far-meadow", 3).Sheet.Captions(), c => c.Text.StartsWith("Ground as measured by the survey", StringComparison.Ordinal));
    }

    [Fact]
    public void A_long_name_gives_way_to_the_verdict()
    {
        var plan = Demo.Plan("alder-lane");
        var sheet = PathProfileSheet.DrawAll(Demo.On(plan with { Siting = plan.Siting with { Paths = [plan.Siting.Paths[0] with { Site = string.Join(' ', Enumerable.Repeat("mountain", 7)) }] } }), Demo.Measure).Single();
        Assert.Equal("", sheet.Faults());
        Assert.Contains(sheet.Captions(), c => c.Text.Contains('…') && c.Text.EndsWith(": the ground blocks the ray", StringComparison.Ordinal));
    }

    [Theory]
    [InlineData("alder-lane", "mi", 1.609344)]
    [InlineData("brook-terrace", "km", 1)]
    public void Distances_count_in_the_units_of_the_job(string job, string unit, double kilometres)
    {
        var (path, sheet) = Draw(job, 2);
        var last = sheet.Captions().Single(c => c.Anchor == Anchor.Middle && c.Text.EndsWith("\u00A0" + unit, StringComparison.Ordinal));
        var value = double.Parse(last.Text.Split('\u00A0')[0], System.Globalization.CultureInfo.InvariantCulture);
        Assert.Equal(Scale(path).X(value * kilometres), last.At.X, 6);
    }

    [Fact]
    public void Obstructions_of_the_direction_are_named_and_others_are_not()
    {
        Assert.Contains(Draw("alder-lane", 2).Sheet.Captions(), c => c.Text == "maples");
        Assert.DoesNotContain(Draw("alder-lane", 1).Sheet.Captions(), c => c.Text is "maples" or "barn");
    }

    [Fact]
    public void Without_known_ground_there_is_no_profile()
    {
        var plan = Demo.Plan("alder-lane");
        Assert.Empty(PathProfileSheet.DrawAll(Demo.On(plan with { Siting = plan.Siting with { Paths = [] } }), Demo.Measure));
    }

    [Fact]
    public void The_description_tells_the_numbers()
    {
        var words = Draw("alder-lane", 1).Sheet.Description;
        Assert.Contains("to Kestrel Ridge, 25.5\u00A0mi away", words, StringComparison.Ordinal);
        Assert.Contains("The ground blocks the ray. Ground by elevation tiles, ray at 569\u00A0MHz; smallest clearance \u22120.73 of the first Fresnel radius, at 2.6\u00A0mi.", words, StringComparison.Ordinal);
        Assert.Contains("horizon of the antenna at 2.5\u00A0mi, 1838\u00A0ft above the sea, 0.7° up", words, StringComparison.Ordinal);
    }

    [Fact]
    public void Words_keep_apart_and_lines_stay_on_the_sheet_whatever_the_path() => Anywhere.Sample(plan =>
    {
        var faults = PathProfileSheet.DrawAll(Demo.On(plan), Demo.Measure).Single().Faults();
        Assert.True(faults.Length == 0, faults);
    }, iter: 300);

    private static Gen<Plan> Anywhere =>
        from job in Gen.Int[0, 1]
        from km in Gen.OneOf(Gen.Double[0.11, 3], Gen.Double[3, 160])
        from ground in Gen.OneOf(Gen.Double[0, 1], Gen.Double[0, 900]).Array[9, 60]
        from masts in Gen.Select(Gen.Double[1, 60], Gen.Double[1, 700])
        from things in Gen.Int[0, 30]
        select Build(Demo.Plan(job == 0 ? "alder-lane" : "brook-terrace"), km, ground, masts, things);

    private static Plan Build(Plan plan, double km, double[] ground, (double Antenna, double Transmitter) masts, int things)
    {
        var (own, top) = (ground[0] + masts.Antenna, ground[^1] + masts.Transmitter);
        var points = ground.Select((g, i) =>
        {
            var d = km * i / (ground.Length - 1);
            var bulge = EffectiveEarth.BulgeM(d * 1000, Math.Max(0, km - d) * 1000);
            return new PathPoint(d, g, g + bulge, bulge, own + (top - own) * d / km, FresnelZone.RadiusM(1, 570, d, Math.Max(0, km - d)));
        }).ToArray();
        var tightest = points[1..^1].MinBy(p => (p.RayM - p.CurvedM) / p.FresnelM)!;
        var share = (tightest.RayM - tightest.CurvedM) / tightest.FresnelM;
        var edge = new PathEdge("horizon of the transmitter", tightest.DistanceKm, tightest.GroundM, tightest.CurvedM, 1);
        var obstructions = Enumerable.Range(0, things).Select(i => new ObstructionPlan($"thing-{i}", ObstructionKind.Trees, 0, 10, 1 + i * 3, 12, 4)).ToArray();
        var path = plan.Siting.Paths[0] with
        {
            DistanceKm = km, AntennaM = own, TransmitterM = top, InSight = share >= 0, ClearShare = share, ClearAtKm = tightest.DistanceKm, Points = points, Tightest = tightest,
            Edges = share >= 0 ? [] : [edge with { What = "horizon of the antenna" }, edge], Obstructions = [.. obstructions.Select(o => o.Name)],
        };
        return plan with { Siting = plan.Siting with { Obstructions = obstructions, Paths = [path] } };
    }

    private static (PathPlan Path, Drawing Sheet) Draw(string job, int number)
    {
        var path = Demo.Plan(job).Siting.Paths.Single(p => p.Number == number);
        return (path, PathProfileSheet.DrawAll(Demo.On(Demo.Plan(job)), Demo.Measure).Single(d => d.Id == $"path-profile-{number}"));
    }

    private static ProfileScale Scale(PathPlan path) => ProfileScale.Of(path, 170, 0);

    // Heights of the sheet counted as if the picture began at its upper edge.
    private static double Shifted(Drawing sheet, PathPlan path, double y) => y - (sheet.Lines(Ink.Accent, 0.9).First().Points[0].Y - Scale(path).Y(path.AntennaM));

    private static IReadOnlyList<PaperPoint> Ground(Drawing sheet) => sheet.Lines(Ink.Line, 0.6).First(l => l.Points.Count > 10).Points;
}
