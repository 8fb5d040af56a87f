using InstallPacket.Tests;

namespace InstallPacket.Plans.Tests;

/// <summary>A mast with its mount, and a bond, that are there already.</summary>
public class ExistingMountTests
{
    private const string Id = "sugar-lane";
    private const string File = Id + "/job.yaml";

    private static DemoJobs OldMast() => DemoJobs.Load().With(File, "{ at: eave, kind: eave-bracket", "{ existing: yes, at: eave, kind: eave-bracket");

    private static DemoJobs OldBond(string more = "") =>
        DemoJobs.Load().With(File, "bonding: { connection:", $"bonding: {{ existing: yes, {more}connection:");

    private static Plan New => DemoPlans.Of(Id);

    [Fact]
    public void Old_mast_is_not_bought_drilled_or_counted_in_hours_but_the_clamps_of_the_antenna_are_new()
    {
        var plan = DemoPlans.House(Id, OldMast());
        Assert.DoesNotContain(plan.Materials.Items, i => i.Part is "eave-bracket-one-plate" or "mast-38" or "lag-screw-3-8");
        Assert.Contains(plan.Materials.Items, i => i is { Part: "u-bolt-m8", Count: 2 });
        Assert.DoesNotContain(plan.Materials.Time.Tasks, t => t.Id == "mount");
        Assert.DoesNotContain(plan.Materials.Tools, t => t.Id is "drill" or "drill-bit" or "drill-bit-sheet" or "eye-protection");
        Assert.Contains(New.Materials.Tools, t => t.Id == "eye-protection");
        Assert.DoesNotContain(plan.Mounting.Hazards, h => h.Id == "drilling");
        Assert.Contains(plan.Mounting.Hazards, h => h.Id == "old-mast");
    }

    [Fact]
    public void Steps_inspect_an_old_mast_before_they_hang_the_antenna_on_it_and_raise_nothing()
    {
        string[] steps = [.. DemoPlans.House(Id, OldMast()).Handover.Steps.Where(s => s.Phase == "mount").Select(s => s.Id)];
        Assert.Equal(["inspect-mount", "hang", "aim", "clamp"], steps);
        Assert.Contains(New.Handover.Steps, s => s.Id == "raise");
    }

    [Fact]
    public void Strength_of_an_old_mast_is_that_of_a_new_one_and_what_no_figure_shows_is_not_proved()
    {
        var plan = DemoPlans.Of(Id, OldMast());
        Assert.Equal(New.Mounting.Wind!.UseShare, plan.Mounting.Wind!.UseShare, 12);
        Assert.Equal(New.Mounting.LoadPath!.Checks.Select(c => (c.What, c.UseShare)), plan.Mounting.LoadPath!.Checks.Select(c => (c.What, c.UseShare)));
        Assert.Equal(["rust inside the old mast and the hold of its old fixings"], plan.Mounting.LoadPath.Unproved.Except(New.Mounting.LoadPath.Unproved));
    }

    [Fact]
    public void New_screw_in_an_old_mount_is_bought_and_drilled_and_its_lead_hole_is_checked()
    {
        var jobs = OldMast().With(File, "pilot: 1/4 in, into: \"rafter ends", "existing: no, pilot: 1/2 in, into: \"rafter ends");
        var plan = DemoPlans.House(Id, jobs);
        Assert.Contains(plan.Materials.Items, i => i is { Part: "lag-screw-3-8", Count: 4 });
        Assert.Contains(plan.Handover.Steps, s => s is { Id: "pilot", Subject: "lag-screw-3-8" });
        Assert.True(plan.Has("lead-hole-unfit"));
        Assert.False(DemoPlans.House(Id, OldMast().With(File, "pilot: 1/4 in, into: \"rafter", "pilot: 1/2 in, into: \"rafter")).Has("lead-hole-unfit"));
    }

    [Fact]
    public void Guys_of_an_old_mast_are_neither_bought_nor_cut_but_looked_at()
    {
        const string guyed = "far-meadow";
        var old = DemoPlans.House(guyed, DemoJobs.Load().With(guyed + "/job.yaml", "\nmounting:\n", "\nmounting:\n  existing: yes\n"));
        Assert.Contains(DemoPlans.Of(guyed).Materials.Pieces, p => p.Kind == Materials.PieceKind.Guy);
        Assert.DoesNotContain(old.Materials.Pieces, p => p.Kind == Materials.PieceKind.Guy);
        Assert.DoesNotContain(old.Materials.Items, i => i.Kind == PartKind.Guy);
        Assert.Contains(old.Handover.Steps, s => s is { Id: "inspect-guys", Count: > 0 });
        Assert.DoesNotContain(old.Handover.Steps, s => s.Id is "anchors" or "tension" or "raise");
        Assert.NotEmpty(old.Mounting.LoadPath!.Guys);
    }

    [Fact]
    public void Old_bond_is_neither_bought_nor_cut_but_measured_against_the_resistance_of_its_conductors()
    {
        var plan = DemoPlans.House(Id, OldBond());
        Assert.DoesNotContain(plan.Materials.Items, i => i.Kind == PartKind.Bonding);
        Assert.DoesNotContain(plan.Materials.Pieces, p => p.Kind == Materials.PieceKind.Bonding);
        Assert.DoesNotContain(plan.Materials.Time.Tasks, t => t.Id == "bond");
        Assert.DoesNotContain(plan.Materials.Tools, t => t.Id == "conductor-cutter");
        Assert.Equal(["bond-mast-existing", "bond-shield-existing"], plan.Handover.Steps.Where(s => s.Phase == "bond").Select(s => s.Id));
        // 10 AWG copper has 3.28 ohm/km by the wire table.
        Assert.Equal(3.28 * 20 * 0.3048 / 1000, plan.Bonding.MastOhm!.Value, 4);
        Assert.Equal(3.28 * 5 * 0.3048 / 1000, plan.Bonding.ShieldOhm!.Value, 4);
        Assert.Equal(New.Bonding.Sizes.Select(s => s.UseShare), plan.Bonding.Sizes.Select(s => s.UseShare));
    }

    [Fact]
    public void Old_rod_is_not_driven_and_its_resistance_is_calculated_as_before()
    {
        const string rod = "far-meadow";
        var old = DemoPlans.House(rod, DemoJobs.Load().With(rod + "/job.yaml", "    soil: loam\n", "    soil: loam\n    existing: yes\n"));
        Assert.DoesNotContain(old.Materials.Items, i => i.For.Contains("rod of the mast", StringComparison.Ordinal) || i.For.Contains("jumper of the rod", StringComparison.Ordinal));
        Assert.Contains(DemoPlans.Of(rod).Materials.Items, i => i.For.Contains("rod of the mast", StringComparison.Ordinal));
        Assert.DoesNotContain(old.Materials.Pieces, p => p.Run == "jumper of the rod");
        Assert.Equal("rod-existing", old.Handover.Steps.First(s => s.Phase == "bond").Id);
        Assert.Contains(old.Handover.Steps, s => s.Id == "bond-mast");
        Assert.Equal(DemoPlans.Of(rod).Bonding.Rod!.LowOhm, old.Bonding.Rod!.LowOhm);
    }

    [Fact]
    public void Only_the_conductor_from_the_mast_may_be_there()
    {
        var jobs = DemoJobs.Load().With(File, "bonding: { connection:", "bonding: { mast-route: { existing: yes }, connection:");
        var plan = DemoPlans.House(Id, jobs);
        Assert.Equal(["bond-mast-existing", "bond-shield", "bond-check"], plan.Handover.Steps.Where(s => s.Phase == "bond").Select(s => s.Id));
        Assert.Equal("bonding of the shield", Assert.Single(plan.Materials.Pieces, p => p.Kind == Materials.PieceKind.Bonding).Run);
        Assert.Equal(5 * 0.3048, plan.Materials.Items.Single(i => i.Kind == PartKind.Bonding).LengthM!.Value, 3);
        Assert.Null(plan.Bonding.ShieldOhm);
    }

    [Fact]
    public void Bond_that_is_there_but_for_one_conductor_lays_that_one()
    {
        var plan = DemoPlans.House(Id, OldBond("shield-route: { existing: no }, "));
        Assert.Equal(["bond-mast-existing", "bond-shield", "bond-check"], plan.Handover.Steps.Where(s => s.Phase == "bond").Select(s => s.Id));
    }
}
