using InstallPacket.Tests;

namespace InstallPacket.Plans.Tests;

/// <summary>The steps follow the order of the trade and carry the numbers of the plan.</summary>
public class WorkStepTests
{
    private static readonly string[] Phases = ["leaving", "arrival", "ground", "mount", "outside", "bond", "inside", "power", "measure", "finish"];

    [Theory]
    [InlineData("alder-lane")]
    [InlineData("brook-terrace")]
    [InlineData("far-meadow")]
    [InlineData("mill-yard")]
    [InlineData("pine-corner")]
    [InlineData("quay-loft")]
    public void Steps_are_counted_through_and_phases_follow_each_other(string id)
    {
        var steps = DemoPlans.Of(id).Handover.Steps;
        Assert.Equal(Enumerable.Range(1, steps.Count), steps.Select(s => s.Number));
        Assert.Equal(steps.Select(s => Array.IndexOf(Phases, s.Phase)).Order(), steps.Select(s => Array.IndexOf(Phases, s.Phase)));
    }

    [Fact]
    public void Every_run_has_one_step_with_the_number_of_its_piece_and_its_label()
    {
        var plan = DemoPlans.Of("alder-lane");
        foreach (var run in plan.Routing.Runs)
        {
            var step = Assert.Single(plan.Handover.Steps, s => s.Id == "run" && s.Subject == run.Id);
            Assert.Equal(run.Number, step.PieceNumber);
            Assert.Equal(run.Number, plan.Materials.Pieces.Single(p => p.Run == run.Id).Number);
        }
    }

    [Fact]
    public void Hazards_come_before_the_ladder_levelling_before_the_pilot_inserter_before_splitter_power_before_measuring()
    {
        var plan = DemoPlans.Of("alder-lane");
        int At(string id, string subject = "") => plan.Handover.Steps.First(s => s.Id == id && (subject.Length == 0 || s.Subject == subject)).Number;
        Assert.True(At("hazards") < At("ladder") && At("ladder") < At("level-mark") && At("level-mark") < At("pilot") && At("pilot") < At("fix"));
        Assert.True(At("device", "P1") < At("bond-mast"), "a masthead amplifier is fitted outside");
        Assert.True(At("inserter") < At("device", "S1") && At("device", "S1") < At("supply") && At("supply") < At("fine-aim"));
        Assert.True(At("fine-aim") < At("lock-aim") && At("lock-aim") < At("scan"));
    }

    [Fact]
    public void Torques_voltages_and_levels_are_those_of_the_plan()
    {
        var plan = DemoPlans.Of("alder-lane");
        var fix = plan.Handover.Steps.First(s => s.Id == "fix");
        Assert.Equal(plan.Mounting.Fixings[0].TorqueNm, fix.TorqueNm);
        Assert.Equal(8, fix.Count);
        Assert.Equal(plan.Cabling.Feeds[0].ArrivesV, plan.Handover.Steps.First(s => s.Id == "supply").ExpectV);
        foreach (var step in plan.Handover.Steps.Where(s => s.PointNumber is not null))
        {
            var levels = plan.Cabling.TestPoints.Single(p => p.Number == step.PointNumber).Levels;
            Assert.Equal(levels.Max(l => l.LevelDbm), step.Expect[0].LevelDbm);
            Assert.Equal(levels.Min(l => l.LevelDbm), step.Expect[^1].LevelDbm);
        }
    }

    [Fact]
    public void Ballast_has_no_pilot_holes_and_guys_have_their_anchors_first()
    {
        var roof = DemoPlans.Of("quay-loft").Handover.Steps;
        Assert.DoesNotContain(roof, s => s.Id is "pilot" or "level-mark");
        Assert.Equal(8, roof.Single(s => s.Id == "blocks").Count);
        var farm = DemoPlans.Of("far-meadow").Handover.Steps;
        Assert.True(farm.First(s => s.Id == "anchors").Number < farm.First(s => s.Id == "raise").Number);
        Assert.Equal(8, farm.Single(s => s.Id == "tension").Count);
    }

    [Fact]
    public void Existing_coax_is_found_and_labelled_and_nothing_is_cut_for_it()
    {
        var plan = DemoPlans.Of("mill-yard");
        var step = Assert.Single(plan.Handover.Steps, s => s.Id == "existing");
        Assert.Equal("R10", step.Subject);
        Assert.DoesNotContain(plan.Materials.Pieces, p => p.Run == "R10");
        Assert.DoesNotContain(plan.Handover.Steps, s => s.Id == "run" && s.Subject == "R10");
    }

    [Fact]
    public void Guys_are_cut_each_with_its_ends()
    {
        var plan = DemoPlans.Of("far-meadow");
        var guys = plan.Materials.Pieces.Where(p => p.Kind == PieceKind.Guy).ToArray();
        Assert.Equal(8, guys.Length);
        double Length(double ringFt) => Math.Sqrt(ringFt * ringFt + 20 * 20) * 0.3048 + 0.8;
        Assert.Equal(Length(22), guys[0].LengthM, 9);
        Assert.Equal(Length(33), guys[^1].LengthM, 9);
        Assert.Equal(guys.Sum(g => g.LengthM), plan.Materials.Items.Single(i => i.Part == "guy-wire-5").LengthM!.Value, 9);
    }
}
