using CsCheck;
using InstallPacket.Plans;

namespace InstallPacket.Drawings.Tests;

public class AimCardTests
{
    private static readonly RingGeometry Ring = new(new(0, 0), true);

    [Fact]
    public void A_site_due_east_lies_right_of_the_centre()
    {
        var card = Draw(WithSites(Site(1, "East Hill", 90)));
        var line = card.Lines(Ink.Line, 0.6).First(l => l.Points.Count == 2);
        Assert.True(line.Points[1].X > line.Points[0].X + 30);
        Assert.Equal(line.Points[0].Y, line.Points[1].Y, 6);
    }

    [Fact]
    public void The_number_of_a_site_stands_on_the_ring_at_its_bearing()
    {
        var card = Draw(WithSites(Site(1, "West Hill", 280)));
        var number = card.Captions().Single(c => c.Text == "1");
        Assert.Equal(280, Polar.BearingDeg(Centre(card), new(number.At.X, number.At.Y - 0.35 * number.SizeMm)), 6);
    }

    [Fact]
    public void Labels_stand_on_the_side_of_their_sites()
    {
        var card = Draw(WithSites(Site(1, "West", 280), Site(2, "East", 100)));
        Assert.True(card.Caption("1\u00A0West").Middle().X < Centre(card).X - Ring.Lane);
        Assert.True(card.Caption("2\u00A0East").Middle().X > Centre(card).X + Ring.Lane);
    }

    [Theory]
    [InlineData(0)]
    [InlineData(130)]
    [InlineData(236)]
    public void The_arrow_points_along_the_aim(double aim)
    {
        var plan = Demo.Plan("alder-lane");
        plan = plan with { Reception = plan.Reception with { Aim = plan.Reception.Aim with { TrueDeg = aim } } };
        // The last heavy arrow stands in the field; the first is the small one of the box.
        var shaft = Draw(plan).Lines(Ink.Accent, 1.3).Last();
        Assert.Equal(aim, Polar.BearingDeg(shaft.Points[0], shaft.Points[1]), 6);
    }

    [Theory]
    [InlineData(12)]
    [InlineData(-12)]
    public void The_compass_ring_turns_by_the_declination(double declination)
    {
        var plan = Demo.Plan("alder-lane");
        plan = plan with { Siting = plan.Siting with { Compass = plan.Siting.Compass with { DeclinationDeg = declination } } };
        var card = Draw(plan);
        var centre = Centre(card);
        var zeros = card.Captions().Where(c => c.Text == "000").Select(c => Polar.BearingDeg(centre, new(c.At.X, c.At.Y - 0.35 * c.SizeMm))).ToArray();
        Assert.Equal(0, zeros[0], 6);
        Assert.Equal(declination, zeros[1] > 180 ? zeros[1] - 360 : zeros[1], 6);
    }

    [Fact]
    public void Each_antenna_has_its_arrow_its_line_in_the_box_and_its_mark_on_the_ring()
    {
        var plan = Demo.TwoAntennas;
        var more = Assert.Single(plan.Reception.MoreAntennas);
        var card = Draw(plan);
        foreach (var (id, aim) in new[] { (plan.Reception.AntennaId, plan.Reception.Aim), (more.AntennaId, more.Aim) })
        {
            Assert.Single(card.Captions(), c => c.Text == $"{id}: aim {AimHeader.Bearings(Demo.On(Demo.TwoAntennas), aim.TrueDeg, aim.MagneticDeg)}");
            Assert.Single(card.Captions(), c => c.Text == $"{id} {UnitPrinter.Plain.Bearing(aim.TrueDeg)} true");
            Assert.Contains($"{id}: aim {AimHeader.Bearings(Demo.On(Demo.TwoAntennas), aim.TrueDeg, aim.MagneticDeg)}", card.Description, StringComparison.Ordinal);
        }
        Assert.Matches($"^A1 [0-9]+° to the right of the water tower, A2 [0-9]+° to the right$", card.Captions().Single(c => c.Text.Contains("of the water tower", StringComparison.Ordinal)).Text);
        // In the box, on the card and in the legend; the one from the middle of the ring is the longest.
        var arrow = card.Lines(Ink.Accent, FieldPainter.MoreMm).Where(l => !l.Closed).MaxBy(l => Polar.Distance(l.Points[0], l.Points[1]))!;
        Assert.Equal(0, Polar.Distance(Centre(card), arrow.Points[0]), 6);
        Assert.Equal(more.Aim.TrueDeg, Polar.BearingDeg(arrow.Points[0], arrow.Points[1]), 6);
    }

    [Fact]
    public void Without_a_usable_compass_there_is_one_ring()
    {
        var plan = Demo.Plan("alder-lane");
        plan = plan with { Siting = plan.Siting with { Compass = plan.Siting.Compass with { Usable = false } } };
        Assert.Single(Draw(plan).Captions(), c => c.Text == "000");
    }

    [Fact]
    public void The_house_is_turned_so_that_true_north_is_up()
    {
        var plan = Demo.Plan("alder-lane");
        plan = plan with { Routing = plan.Routing with { PlanUpDeg = 90 } };
        // With the plan's up pointing east, the corner that lies up of the antenna on the plan lies right of it on the card.
        var house = Draw(plan).Lines(Ink.Line, 0.9).Single();
        var antenna = HousePlace.Antenna(Demo.On(plan))!;
        var centre = Centre(Draw(plan));
        for (var i = 0; i < house.Points.Count; i++)
        {
            var corner = plan.Routing.Outline[i];
            Assert.Equal(Math.Sign(corner.UpM - antenna.UpM), Math.Sign(house.Points[i].X - centre.X));
            Assert.Equal(Math.Sign(corner.RightM - antenna.RightM), Math.Sign(house.Points[i].Y - centre.Y));
        }
    }

    [Fact]
    public void Without_an_outline_only_the_antenna_is_drawn()
    {
        var plan = Demo.Plan("alder-lane");
        var card = Draw(plan with { Routing = plan.Routing with { Outline = [] } });
        Assert.Empty(card.Lines(Ink.Line, 0.9));
        Assert.Equal("", card.Faults());
    }

    [Fact]
    public void The_obstruction_spans_its_width_around_its_bearing()
    {
        var card = Draw(Demo.Plan("alder-lane"));
        var maples = card.Lines(Ink.Warning, 2.4).First(l => l.Points.Count > 2);
        Assert.Equal(231, Polar.BearingDeg(Centre(card), maples.Points[0]), 6);
        Assert.Equal(249, Polar.BearingDeg(Centre(card), maples.Points[^1]), 6);
    }

    [Theory]
    [InlineData(204, 268, 64)]
    [InlineData(350, 20, 30)]
    public void The_band_runs_from_one_end_of_the_arc_to_the_other(double from, double to, double width)
    {
        var card = Draw(WithArc(from, to, width));
        var band = card.Lines(Ink.Accent, 1.4).First(l => l.Points.Count > 3);
        Assert.Equal(from, Polar.BearingDeg(Centre(card), band.Points[0]), 6);
        Assert.Equal(to, Polar.BearingDeg(Centre(card), band.Points[^1]), 6);
        Assert.All(band.Points, p => Assert.InRange((Polar.BearingDeg(Centre(card), p) - from + 360 + 1e-6) % 360, 0, width + 1e-5));
        Assert.Contains(card.Captions(), c => c.Text == UnitPrinter.Plain.Bearing(from));
        Assert.Contains(card.Captions(), c => c.Text == UnitPrinter.Plain.Bearing(to));
        Assert.Equal("", card.Faults());
    }

    [Fact]
    public void A_closed_arc_has_no_ends_and_without_an_arc_there_is_no_band()
    {
        var closed = Draw(WithArc(10, 9, 360));
        Assert.DoesNotContain(closed.Captions(), c => c.Text is "010°" or "009°");
        Assert.Contains(closed.Captions(), c => c.Text == "every heading keeps every channel");
        Assert.Contains("Every heading keeps every channel of this aim.", closed.Description, StringComparison.Ordinal);
        var plan = Demo.Plan("alder-lane");
        Assert.Empty(Draw(plan with { Reception = plan.Reception with { Aim = plan.Reception.Aim with { Arc = null } } }).Lines(Ink.Accent, 1.4));
    }

    [Fact]
    public void A_second_aim_has_its_line_and_its_label()
    {
        var plan = Demo.Plan("alder-lane");
        var card = Draw(plan with { Reception = plan.Reception with { Aim = plan.Reception.Aim with { Second = new(80, 76, ["pin-40"]) } } });
        var line = card.Lines(Ink.Accent, 0.7).Single(l => l.Points.Count == 2 && l.Pen.Dash == Dash.Dashed);
        Assert.Equal(80, Polar.BearingDeg(line.Points[0], line.Points[1]), 6);
        Assert.Contains(card.Captions(), c => c.Text == "second aim");
        Assert.Contains("A second antenna at 080° true, 076° on the compass would add pin-40.", card.Description, StringComparison.Ordinal);
        Assert.Equal("", card.Faults());
    }

    [Fact]
    public void Marks_on_the_ring_keep_their_distance() => Pins.Sample(bearings =>
    {
        var spread = RingPin.Spread([.. bearings.Select(b => new RingPin(PinKind.OtherSite, b, "1", "x", []))], 6.05);
        var sorted = spread.Select(d => (d % 360 + 360) % 360).Order().ToArray();
        for (var i = 0; i < sorted.Length && sorted.Length > 1; i++)
        {
            var gap = i + 1 < sorted.Length ? sorted[i + 1] - sorted[i] : sorted[0] + 360 - sorted[^1];
            if (gap < 6.0) return false;
        }
        return true;
    });

    [Fact]
    public void Labels_never_overlap_whatever_the_sites() => Gen.Select(Pins, Names).Sample((bearings, names) =>
    {
        var sites = bearings.Select((b, i) => Site(i + 1, names[i % names.Length], b)).ToArray();
        var faults = Draw(WithSites(sites)).Faults();
        Assert.True(faults.Length == 0, faults);
    }, iter: 300);

    [Fact]
    public void The_description_tells_the_numbers()
    {
        var words = Draw(Demo.Plan("alder-lane")).Description;
        Assert.Contains("Aim 233° true, 229° on the compass", words, StringComparison.Ordinal);
        Assert.Contains("between 225° and 247° true, 221° and 243° on the compass, still receives every channel", words, StringComparison.Ordinal);
        Assert.Contains("1 Kestrel Ridge at 208° true, 25.5\u00A0mi", words, StringComparison.Ordinal);
    }

    private static Gen<double[]> Pins => Gen.OneOf(Gen.Double[0, 360], Gen.Double[200, 204], Gen.Double[-4, 4].Select(d => (d + 360) % 360)).Array[1, 14];

    private static Gen<string[]> Names => Gen.String[Gen.Char["abcdefghijklmnoprstuw   -ÄÖé"], 1, 60].Where(s => s.Trim().Length > 0).Array[1, 5];

    private static SitePlan Site(int number, string name, double bearing) =>
        new(name, number, 10 * number, bearing, bearing, "N", null, ["x"], number % 3 != 0);

    private static Plan WithSites(params SitePlan[] sites)
    {
        var plan = Demo.Plan("alder-lane");
        return plan with { Siting = plan.Siting with { Sites = sites } };
    }

    private static Plan WithArc(double from, double to, double width)
    {
        var plan = Demo.Plan("alder-lane");
        return plan with { Reception = plan.Reception with { Aim = plan.Reception.Aim with { Arc = plan.Reception.Aim.Arc! with { FromDeg = from, ToDeg = to, WidthDeg = width } } } };
    }

    private static Drawing Draw(Plan plan) => AimCardSheet.Draw(Demo.On(plan), Demo.Measure)!;

    private static PaperPoint Centre(Drawing card) => card.Shapes.OfType<Circle>().First(c => Math.Abs(c.RadiusMm - Ring.Outer) < 1e-9).Centre;
}
