using CsCheck;
using InstallPacket.Plans;

namespace InstallPacket.Drawings.Tests;

public class HorizonStripTests
{
    private const double LeftMm = 13;
    private const double RightMm = 165;

    [Theory]
    [InlineData(236)]
    [InlineData(0)]
    [InlineData(359.5)]
    public void A_site_at_the_aim_stands_in_the_middle_of_the_strip(double aim)
    {
        var strip = Draw(Aimed(WithSites(Site(1, "Here", aim, 0.4)), aim));
        Assert.Equal((LeftMm + RightMm) / 2, Tower(strip).X, 6);
    }

    [Theory]
    [InlineData(90, 0.25)]
    [InlineData(-90, -0.25)]
    [InlineData(45, 0.125)]
    public void A_site_stands_right_of_the_aim_when_it_lies_clockwise_of_it(double turn, double share)
    {
        var strip = Draw(WithSites(Site(1, "There", (Demo.Plan("alder-lane").Reception.Aim.TrueDeg + turn + 360) % 360, 0.4)));
        Assert.Equal(share, (Tower(strip).X - (LeftMm + RightMm) / 2) / (RightMm - LeftMm), 6);
    }

    [Fact]
    public void Aim_of_a_further_antenna_stands_at_its_bearing()
    {
        var plan = Demo.TwoAntennas;
        var more = Assert.Single(plan.Reception.MoreAntennas);
        var strip = HorizonStripSheet.Draw(Demo.On(plan), Demo.Measure)!;
        Assert.Single(strip.Captions(), c => c.Text == more.AntennaId + " aim");
        Assert.Single(strip.Captions(), c => c.Text.Contains("aim of A1", StringComparison.Ordinal) && c.Text.Contains($"{more.AntennaId} {UnitPrinter.Plain.Bearing(more.Aim.TrueDeg)} true", StringComparison.Ordinal));
        Assert.Contains($"{more.AntennaId}: aim {AimHeader.Bearings(Demo.On(Demo.TwoAntennas), more.Aim.TrueDeg, more.Aim.MagneticDeg)}", strip.Description, StringComparison.Ordinal);
        // The round bearings below the strip give its scale.
        var (at60, at90) = (strip.Caption("060°").At.X, strip.Caption("090°").At.X);
        var turned = (at90 - at60) / 30;
        var x = strip.Lines(Ink.Accent, FieldPainter.MoreMm).MaxBy(l => Math.Abs(l.Points[0].Y - l.Points[1].Y))!.Points[0].X;
        Assert.Equal(0, Math.IEEERemainder(60 + (x - at60) / turned - more.Aim.TrueDeg, 360), 6);
    }

    [Fact]
    public void Towers_and_skyline_stand_at_their_angles()
    {
        var plan = WithSites(Site(1, "Low", 200, 0.2), Site(2, "High", 250, 0.7));
        var strip = Draw(plan);
        // The labels of the axis give the scale, independently of the code that placed the marks.
        var (zero, one) = (LevelAt(strip, "0.0°"), LevelAt(strip, "1.0°"));
        double AngleOf(double y) => (zero - y) / (zero - one);
        Assert.Equal([0.2, 0.7], Towers(strip).Select(t => Math.Round(AngleOf(t.Y), 6)).Order());
        var highest = plan.Siting.Skyline.Max(p => p.AngleDeg!.Value);
        Assert.Equal(highest, Skyline(strip).Max(p => AngleOf(p.Y)), 6);
    }

    [Fact]
    public void The_highest_point_of_the_skyline_is_its_highest_mark_at_its_bearing()
    {
        var plan = Demo.Plan("alder-lane");
        var strip = Draw(plan);
        var highest = plan.Siting.Skyline.MaxBy(p => p.AngleDeg)!;
        var mark = Skyline(strip).MinBy(p => p.Y);
        var turn = ((highest.BearingTrueDeg - plan.Reception.Aim.TrueDeg + 540) % 360) - 180;
        Assert.Equal((LeftMm + RightMm) / 2 + turn * (RightMm - LeftMm) / 360, mark.X, 6);
    }

    [Fact]
    public void The_skyline_reaches_from_edge_to_edge()
    {
        var points = Skyline(Draw(Demo.Plan("alder-lane"))).ToArray();
        Assert.Equal(LeftMm, points.Min(p => p.X), 6);
        Assert.Equal(RightMm, points.Max(p => p.X), 6);
    }

    [Fact]
    public void What_is_unknown_is_left_open_and_says_so()
    {
        var plan = Demo.Plan("far-meadow");
        var strip = Draw(plan);
        Assert.Contains(strip.Captions(), c => c.Text == "not known");
        // The measured arc is known from 202 to 232 degrees, half a step beyond its outermost points.
        var known = strip.Lines(Ink.Line, 1.1).SelectMany(l => l.Points).Where(p => p.Y < strip.Caption("N").At.Y).ToArray();
        var aim = plan.Reception.Aim.TrueDeg;
        Assert.Equal((LeftMm + RightMm) / 2 + (201 - aim) * 152 / 360, known.Min(p => p.X), 6);
        Assert.Equal((LeftMm + RightMm) / 2 + (233 - aim) * 152 / 360, known.Max(p => p.X), 6);
    }

    [Fact]
    public void Trees_are_hatched_and_a_building_is_plain()
    {
        static int Hatched(ObstructionKind kind) => Draw(WithObstructions(Obstruction("thing", kind, 236, 20, 1))).Lines(Ink.Warning, 0.25).Count();
        Assert.Equal(0, Hatched(ObstructionKind.Building));
        Assert.True(Hatched(ObstructionKind.Trees) > 10);
    }

    [Fact]
    public void An_obstruction_spans_its_width_and_ends_at_its_angle()
    {
        var strip = Draw(WithObstructions(Obstruction("barn", ObstructionKind.Building, 233, 36, 1)));
        var outline = strip.Lines(Ink.Warning, 0.6).First(l => l.Points.Count == 4).Points;
        Assert.Equal((LeftMm + RightMm) / 2 - 18 * 152.0 / 360, outline[0].X, 6);
        Assert.Equal((LeftMm + RightMm) / 2 + 18 * 152.0 / 360, outline[3].X, 6);
        Assert.Equal(LevelAt(strip, "1.0°"), outline[1].Y, 6);
    }

    [Fact]
    public void An_obstruction_behind_the_antenna_is_cut_by_the_seam()
    {
        var strip = Draw(WithObstructions(Obstruction("barn", ObstructionKind.Building, 56, 40, 1)));
        var outlines = strip.Lines(Ink.Warning, 0.6).Where(l => l.Points.Count == 4 && l.Points[0].Y < strip.HeightMm - 20).ToArray();
        Assert.Equal(2, outlines.Length);
        Assert.Contains(outlines, l => Math.Abs(l.Points[0].X - LeftMm) < 1e-6);
        Assert.Contains(outlines, l => Math.Abs(l.Points[3].X - RightMm) < 1e-6);
    }

    [Fact]
    public void A_house_in_front_of_the_antenna_is_cut_off_and_the_skyline_stays_visible()
    {
        var strip = Draw(WithObstructions(Obstruction("tower block", ObstructionKind.Building, 236, 40, 58)));
        Assert.Contains("building, top 58.0° up", strip.Captions().Select(c => c.Text));
        Assert.Contains("goes on above", strip.Captions().Select(c => c.Text));
        var skyline = Skyline(strip).ToArray();
        Assert.True(skyline.Max(p => p.Y) - skyline.Min(p => p.Y) > 4);
    }

    [Fact]
    public void The_scale_says_how_many_times_heights_are_drawn()
    {
        var strip = Draw(Demo.Plan("alder-lane"));
        var words = strip.Captions().Single(c => c.Text.StartsWith("heights drawn", StringComparison.Ordinal)).Text;
        var times = int.Parse(words.Split(' ')[2], System.Globalization.CultureInfo.InvariantCulture);
        var perDegree = LevelAt(strip, "0.0°") - LevelAt(strip, "1.0°");
        Assert.Equal(times, perDegree / ((RightMm - LeftMm) / 360), 6);
    }

    [Fact]
    public void A_site_of_unknown_height_stands_on_the_level_of_the_antenna_and_says_so()
    {
        var strip = Draw(WithSites(Site(1, "Somewhere", 236, null)));
        Assert.Equal(LevelAt(strip, "0.0°"), Tower(strip).Y, 6);
        Assert.Contains(strip.Captions(), c => c.Text == "height not known");
        Assert.Contains("1 Somewhere at 236° true, height not known", strip.Description, StringComparison.Ordinal);
    }

    [Fact]
    public void A_tower_in_sight_is_solid_and_one_behind_ground_is_open()
    {
        static bool Solid(Plan plan, int site)
        {
            var tower = Draw(plan with { Siting = plan.Siting with { Sites = [plan.Siting.Sites.Single(s => s.Number == site)] } });
            return TowerShapes(tower).Single().Fill == Fill.Solid;
        }
        Assert.True(Solid(Demo.Plan("brook-terrace"), 1));
        Assert.False(Solid(Demo.Plan("brook-terrace"), 2));
    }

    [Theory]
    [InlineData("N", 0)]
    [InlineData("E", 90)]
    [InlineData("SW", 225)]
    public void Points_of_the_compass_stand_at_their_bearings(string point, double bearing)
    {
        var plan = Demo.Plan("alder-lane");
        var turn = ((bearing - plan.Reception.Aim.TrueDeg + 540) % 360) - 180;
        Assert.Equal((LeftMm + RightMm) / 2 + turn * (RightMm - LeftMm) / 360, Draw(plan).Captions().Last(c => c.Text == point).At.X, 6);
    }

    [Fact]
    public void Without_skyline_and_obstructions_there_is_no_strip()
    {
        var plan = Demo.Plan("alder-lane");
        Assert.Null(HorizonStripSheet.Draw(Demo.On(plan with { Siting = plan.Siting with { Skyline = [], Obstructions = [] } }), Demo.Measure));
        Assert.NotNull(HorizonStripSheet.Draw(Demo.On(plan with { Siting = plan.Siting with { Skyline = [] } }), Demo.Measure));
        Assert.NotNull(HorizonStripSheet.Draw(Demo.On(plan with { Siting = plan.Siting with { Obstructions = [] } }), Demo.Measure));
    }

    [Fact]
    public void The_description_tells_the_numbers()
    {
        var words = Draw(Demo.Plan("alder-lane")).Description;
        Assert.Contains("the aim 233° true in the middle; heights drawn", words, StringComparison.Ordinal);
        Assert.Contains("The skyline is highest at 210° true, 0.8° up.", words, StringComparison.Ordinal);
        Assert.Contains("1 Kestrel Ridge at 208° true, 0.3° up, behind ground", words, StringComparison.Ordinal);
        Assert.Contains("maples (trees) at 240° true, 18.0° wide, its top 1.1° up", words, StringComparison.Ordinal);
        Assert.Contains("not known from 234° to 200°", Draw(Demo.Plan("far-meadow")).Description, StringComparison.Ordinal);
    }

    [Fact]
    public void More_things_than_a_sheet_has_room_for_are_counted()
    {
        var sites = Enumerable.Range(0, 30).Select(i => Site(i + 1, $"Site {i + 1}", i * 12, 0.1 * i)).ToArray();
        var strip = Draw(WithSites(sites));
        Assert.Equal(30, Towers(strip).Count());
        Assert.Contains(strip.Captions(), c => c.Text.EndsWith("more drawn without their names", StringComparison.Ordinal));
        Assert.Equal("", strip.Faults());
    }

    [Fact]
    public void Words_keep_apart_whatever_stands_around() => Around.Sample(plan =>
    {
        var faults = Draw(plan).Faults();
        Assert.True(faults.Length == 0, faults);
    }, iter: 300);

    private static Gen<Plan> Around =>
        from sites in Gen.Select(Gen.OneOf(Gen.Double[0, 360], Gen.Double[234, 238]), Gen.Double[-3, 8], Gen.Bool).Array[0, 16]
        from things in Gen.Select(Gen.Double[0, 360], Gen.Double[0.1, 360], Gen.Double[-60, 85], Gen.Int[0, 3].Select(i => Enum.GetValues<ObstructionKind>()[i])).Array[0, 14]
        from arc in Gen.Select(Gen.Int[0, 359], Gen.Int[0, 359])
        from aim in Gen.Double[0, 360]
        from unknown in Gen.Select(Gen.Int[0, 180], Gen.Int[0, 180])
        select Build(sites, things, arc, aim, unknown);

    private static Plan Build(
        (double Bearing, double Angle, bool Known)[] sites, (double Bearing, double Width, double Angle, ObstructionKind Kind)[] things, (int Left, int Right) arc, double aim, (int From, int To) unknown)
    {
        var plan = Demo.Plan("alder-lane");
        var skyline = plan.Siting.Skyline.Select((p, i) => i >= unknown.From && i < unknown.To ? p with { AngleDeg = null, From = "unknown" } : p);
        var turn = (Left: arc.Left, Right: Math.Min(arc.Right, 359 - arc.Left));
        return Aimed(plan with
        {
            Siting = plan.Siting with
            {
                Skyline = [.. skyline],
                Sites = [.. sites.Select((s, i) => Site(i + 1, "Site of the hills " + (i * 7), s.Bearing, s.Known ? s.Angle : null))],
                Obstructions = [.. things.Select((t, i) => Obstruction($"thing-{i}", t.Kind, t.Bearing, t.Width, t.Angle))],
            },
        }, aim, turn);
    }

    private static Plan Aimed(Plan plan, double aim, (int Left, int Right)? arc = null)
    {
        var (left, right) = arc ?? (30, 30);
        var turned = plan.Reception.Aim.Arc! with { FromDeg = (aim - left + 360) % 360, ToDeg = (aim + right) % 360, WidthDeg = left + right >= 359 ? 360 : left + right };
        return plan with { Reception = plan.Reception with { Aim = plan.Reception.Aim with { TrueDeg = aim, Arc = turned } } };
    }

    private static Plan WithSites(params SitePlan[] sites)
    {
        var plan = Demo.Plan("alder-lane");
        return plan with { Siting = plan.Siting with { Sites = sites, Paths = [] } };
    }

    private static Plan WithObstructions(params ObstructionPlan[] obstructions)
    {
        var plan = Demo.Plan("alder-lane");
        return plan with { Siting = plan.Siting with { Obstructions = obstructions } };
    }

    private static SitePlan Site(int number, string name, double bearing, double? elevation) => new(name, number, 10 * number, bearing, bearing, "N", elevation, ["x"], number % 2 == 1);

    private static ObstructionPlan Obstruction(string name, ObstructionKind kind, double bearing, double width, double angle) => new(name, kind, bearing, width, 50, 10, angle);

    private static Drawing Draw(Plan plan) => HorizonStripSheet.Draw(Demo.On(plan), Demo.Measure)!;

    // A tower is a narrow triangle with its top first; the samples of the legend stand below the scales.
    private static IEnumerable<Polyline> TowerShapes(Drawing strip)
    {
        var axis = strip.Caption("N").At.Y;
        return strip.Shapes.OfType<Polyline>().Where(l => l.Closed && l.Points.Count == 3 && l.Pen.Ink is Ink.Line or Ink.Faint && l.Points[1].Y < axis && Math.Abs(l.Points[1].X - l.Points[2].X - 2.2) < 1e-6);
    }

    private static IEnumerable<PaperPoint> Towers(Drawing strip) => TowerShapes(strip).Select(l => l.Points[0]);

    private static PaperPoint Tower(Drawing strip) => Towers(strip).Single();

    private static IEnumerable<PaperPoint> Skyline(Drawing strip) =>
        strip.Lines(Ink.Line, 0.5).Concat(strip.Lines(Ink.Line, 0.4)).Where(l => !l.Closed && l.Points.Count > 4).SelectMany(l => l.Points);

    private static double LevelAt(Drawing strip, string label) => strip.Lines(Ink.Faint, 0.15).MinBy(l => Math.Abs(l.Points[0].Y - strip.Caption(label).Middle().Y))!.Points[0].Y;
}
