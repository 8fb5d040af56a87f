using InstallPacket.Tests;

namespace InstallPacket.Plans.Tests;

public class MaterialsPlannerTests
{
    private const string Job = "alder-lane/job.yaml";

    [Theory]
    [InlineData("alder-lane")]
    [InlineData("mill-yard")]
    public void Every_piece_is_cut_once_from_stock_of_its_own_kind_and_nothing_is_overfilled(string id)
    {
        var materials = DemoPlans.Of(id).Materials;
        foreach (var cable in materials.Cutting!.Cables)
        {
            Assert.Equal(materials.Pieces.Where(p => p.Cable == cable.Part).Select(p => p.Number), cable.Strips.SelectMany(s => s.Pieces).Select(p => p.Number).Order());
            foreach (var s in cable.Strips) Assert.Equal(s.LengthM, s.Pieces.Sum(p => p.LengthM) + s.LeftM, 6);
            Assert.All(cable.Strips, s => Assert.True(s.LeftM >= 0));
            Assert.Equal(cable.OpenedM - cable.PiecesM, cable.KeptM + cable.ScrapM, 6);
        }
        Assert.Equal(materials.Pieces.Count, materials.Cutting.Cables.SelectMany(c => c.Strips).Sum(s => s.Pieces.Count));
    }

    [Fact]
    public void Runs_keep_their_numbers_and_nothing_is_cut_for_cable_of_the_house()
    {
        var plan = DemoPlans.Of("mill-yard");
        Assert.All(plan.Materials.Pieces.Where(p => p.Kind == PieceKind.Run), p => Assert.Equal(plan.Routing.Runs.Single(r => r.Id == p.Run).Number, p.Number));
        Assert.Equal(plan.Materials.Pieces.Count, plan.Materials.Pieces.Select(p => p.Number).Distinct().Count());
        Assert.DoesNotContain(plan.Materials.Pieces, p => p.Number == plan.Routing.Runs.Single(r => r.Existing).Number);
    }

    [Fact]
    public void Part_used_reels_are_opened_before_a_whole_box_when_they_do()
    {
        var strips = DemoPlans.Of("alder-lane").Materials.Cutting!.Cables.Single(c => c.Part == "coax-6").Strips;
        Assert.All(strips, s => Assert.True(s.PartUsed));
        var without = DemoPlans.Of("alder-lane", DemoJobs.Load().With(Job, "length: 88 ft", "length: 58 ft")).Materials.Cutting!.Cables.Single(c => c.Part == "coax-6");
        Assert.Contains(without.Strips, s => s.Stock == "shop-box");
    }

    [Fact]
    public void Least_cost_follows_the_prices()
    {
        var plan = DemoPlans.Of("mill-yard");
        var coax = plan.Materials.Cutting!.Cables.Single(c => c.Part == "coax-7mm-class-a");
        Assert.Equal("price", coax.By);
        Assert.True(coax.Proved);
        // A drum that is nearly free beats the coils.
        var cheap = DemoPlans.Of("mill-yard", DemoJobs.Load().With("mill-yard/job.yaml", "length: 100 m, price: 74", "length: 100 m, price: 5")).Materials.Cutting!.Cables.Single(c => c.Part == "coax-7mm-class-a");
        Assert.Equal("drum-100", cheap.Strips[0].Stock);
        Assert.True(cheap.PriceAmount < coax.PriceAmount);
    }

    [Fact]
    public void A_search_that_is_cut_short_says_best_found_and_its_bound()
    {
        var job = DemoJobs.Load().Job("alder-lane");
        var stock = new StockLength("box", job.Routing.Runs[0].Cable, StockKind.Box, Calc.Quantities.Length.FromMetres(100), null, false, null, default);
        var stocked = job with { Materials = job.Materials with { Stock = [stock] } };
        var open = 0;
        for (var n = 0; n < 40; n++)
        {
            // Pieces between a fifth and a half of the stock, all different: hard to prove.
            var pieces = Enumerable.Range(0, 21).Select(i => new PlacedPiece(new(i + 1, $"R{i}", "coax-6", "coax", (200 + (i * 37 + n * 101 + i * i * 13) % 300) / 10.0, "a", "b"), default)).ToArray();
            var findings = new FindingList();
            var plan = new CuttingPlanner(stocked, pieces, new Workings(), findings, mostNodes: 30).Plan()!.Cables.Single();
            Assert.Equal(plan.Proved, findings.Sorted.All(f => f.Id != "cutting-not-proved"));
            if (plan.Proved) continue;
            open++;
            Assert.True(plan.BoundM < plan.OpenedM);
            Assert.Equal((plan.OpenedM, plan.BoundM!.Value), ((double)findings.Sorted.Single().Values["opened_m"]!, (double)findings.Sorted.Single().Values["bound_m"]!));
        }
        Assert.True(open > 0);
    }

    [Fact]
    public void A_job_without_stock_has_pieces_and_no_cutting_plan()
    {
        var materials = DemoPlans.Of("brook-terrace").Materials;
        Assert.Null(materials.Cutting);
        Assert.NotEmpty(materials.Pieces);
        Assert.Null(materials.Cost);
    }

    [Fact]
    public void What_is_worth_keeping_goes_back_to_the_van()
    {
        var coax = DemoPlans.Of("mill-yard").Materials.Cutting!;
        var rest = coax.VanList.Single(v => v.Stock == "coil-25");
        Assert.True(rest.PartUsed);
        Assert.Equal(coax.Cables[0].Strips.Single(s => s.Stock == "coil-25").LeftM, rest.LengthM);
        Assert.Equal(5, coax.VanList.Single(v => v.Stock == "lead-short").Count); // counted and not opened
        Assert.DoesNotContain(coax.VanList, v => v.Stock is "van-rest" or "drum-100"); // scrap; and the shop's
    }

    [Fact]
    public void Spares_of_the_job_go_before_those_of_the_part()
    {
        ItemPlan Clips(string share) => DemoPlans.House("alder-lane", DemoJobs.Load().With("alder-lane/job.yaml", "cable-clip: 20 %", $"cable-clip: {share}"))
            .Materials.Items.Single(i => i.Part == "cable-clip");
        var (usual, own) = (Clips("20 %"), Clips("50 %"));
        Assert.Equal(usual.Count, own.Count);
        Assert.Equal(50, own.SparePct);
        Assert.Equal(20, usual.SparePct);
        Assert.True(own.BringCount >= own.Count * 1.5);
        Assert.True(own.Packs is null || (own.Packs - 1) * own.PackCount < Math.Ceiling(own.Count!.Value * 1.5));
    }

    [Fact]
    public void Connectors_come_in_whole_packs_with_spares()
    {
        var item = DemoPlans.Of("alder-lane").Materials.Items.Single(i => i.Part == "connector-f-6");
        Assert.Equal((22, 3, 30), (item.Count, item.Packs, item.BringCount)); // 22 and 10 % are 24.2, so 25 of packs of 10
    }

    [Fact]
    public void Lines_add_up_to_the_total_with_tax()
    {
        var cost = DemoPlans.Of("alder-lane").Materials.Cost!;
        Assert.Equal(cost.Lines.Sum(l => l.LineAmount), cost.NetAmount, 6);
        Assert.Equal(cost.NetAmount + cost.TaxAmount, cost.TotalAmount, 6);
        Assert.Equal(cost.NetAmount * 0.065, cost.TaxAmount, 0.006);
        Assert.Equal(84.00, cost.Lines.Single(l => l.Part == "antenna-vhf-uhf-combined").LineAmount, 9);
    }

    [Fact]
    public void Tools_follow_what_the_plan_does()
    {
        var tools = DemoPlans.Of("alder-lane").Materials.Tools;
        Assert.Equal(3.0 / 16 * 0.0254, tools.Single(t => t.Id == "drill-bit").SizeM!.Value, 9);
        Assert.Equal(12, tools.Single(t => t.Id == "torque-wrench").LowestTorqueNm!.Value, 6);
        Assert.Contains(tools, t => t.Id == "fish-tape");
        Assert.DoesNotContain(tools, t => t.Id is "pulling-line" or "platform");
        Assert.Contains(tools, t => t is { Id: "step-ladder", Why: "asked for by the job" });
        var yard = DemoPlans.Of("mill-yard").Materials.Tools;
        Assert.Contains(yard, t => t.Id == "platform");
        Assert.Contains(yard, t => t.Id == "hammer-drill");
        Assert.DoesNotContain(yard, t => t.Id is "ladder" or "fish-tape");
    }

    [Fact]
    public void Hours_are_the_tables_unless_the_job_says_otherwise()
    {
        var time = DemoPlans.Of("mill-yard").Materials.Time;
        Assert.Equal(("job", 0.4), (time.Tasks.Single(t => t.Id == "conduit").Provenance, time.Tasks.Single(t => t.Id == "conduit").EachH));
        Assert.Equal(time.Tasks.Sum(t => t.PersonH), time.PersonH, 9);
        Assert.Equal(time.PersonH / 3, time.ClockH, 9);
        Assert.InRange(time.DaylightH, 16, 18); // Sweden's latitude in May
        Assert.All(time.Tasks.Where(t => t.Provenance != "job"), t => Assert.Equal("memory", t.Provenance));
    }

    [Fact]
    public void Numbers_of_the_cutting_are_in_the_workings()
    {
        var ids = DemoPlans.Of("alder-lane").Workings.Select(w => w.Formula.Id).ToHashSet();
        Assert.Superset(new HashSet<string> { "cutting-least-cost", "cutting-waste", "count-with-spares", "whole-packs", "line-price", "tax-on-materials", "price-total", "task-hours", "clock-hours", "daylight-hours" }, ids);
    }
}
