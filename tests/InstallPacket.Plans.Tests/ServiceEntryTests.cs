using InstallPacket.Tests;

namespace InstallPacket.Plans.Tests;

/// <summary>The entry of an internet service in the coax of the house: found, parted from the antenna, never touched.</summary>
public class ServiceEntryTests
{
    private const string Id = "sugar-lane";
    private const string File = Id + "/job.yaml";
    private const string Service = "  internet: { kind: optical-unit, at: panel, feeds: the router in the den by its own coax, cut-off: [TV1, TV2, TV3], open-ports: 3 }\n";
    private static Plan Demo => DemoPlans.Of(Id);

    private static DemoJobs Jobs(string service, string runs = "") =>
        DemoJobs.Load().With(File, Service, service).With(File, "  entries: {", runs + "  entries: {");

    private static string[] Read(DemoJobs jobs) => [.. new JobReader(jobs, jobs.Parts()).Read(Id).Findings.Select(f => f.Id)];

    private static Plan With(string service, string runs = "") => DemoPlans.House(Id, Jobs(service, runs));

    [Fact]
    public void Steps_find_the_service_first_take_off_the_runs_of_the_antenna_cap_the_ports_and_look_that_it_works()
    {
        var steps = Demo.Handover.Steps;
        Assert.Equal("service-find", steps.First(s => s.Phase == "arrival" && s.Id is not ("hazards" or "differences")).Id);
        Assert.Equal(["service-cut", "service-cap", "service-check"], steps.Where(s => s.Phase == "inside").Take(3).Select(s => s.Id));
        Assert.Equal(3, steps.Single(s => s.Id == "service-cap").Count);
        Assert.Equal(["TV1", "TV2", "TV3"], Demo.Cabling.Service!.CutOff);
    }

    [Fact]
    public void Terminators_for_the_ports_left_open_are_bought()
    {
        Assert.Equal(3, Demo.Materials.Items.Single(i => i.Part == "terminator-75").Count);
        Assert.Equal(1, With(Service.Replace("open-ports: 3", "open-ports: 1", StringComparison.Ordinal)).Materials.Items.Single(i => i.Part == "terminator-75").Count);
        Assert.DoesNotContain(With("").Materials.Items, i => i.Part == "terminator-75");
    }

    [Fact]
    public void Without_a_number_each_run_that_comes_off_leaves_a_port() => Assert.Equal(2,
        With("  internet: { kind: node, cut-off: [TV1, TV2] }\n").Cabling.Service!.OpenPorts);

    [Fact]
    public void Run_that_stays_connected_is_labelled_and_neither_tested_nor_disconnected_nor_called_unused()
    {
        const string run = "  runs: { modem-line: { cable: coax-unknown, path: [panel, den], length: 20 ft, way: wall, existing: yes } }\n  points: { den: [10 ft, 10 ft, 4 ft] }\n";
        const string service = "  internet: { kind: modem, at: panel, connected: [modem-line], cut-off: [TV1] }\n";
        var plan = With(service, run);
        Assert.Equal(["service-run"], plan.Handover.Steps.Where(s => s.Subject == "modem-line").Select(s => s.Id));
        Assert.DoesNotContain("run-unused", Read(Jobs(service, run)));
        Assert.Contains("run-unused", Read(Jobs(Service, run)));
        Assert.Contains(With(Service, run).Handover.Steps, s => s is { Id: "existing-test", Subject: "modem-line" });
    }

    [Fact]
    public void Traced_runs_raise_no_caution_and_untraced_ones_do()
    {
        Assert.False(Demo.Has("existing-coax"));
        Assert.Equal(4, With("  internet: { kind: modem, at: panel }\n").Findings.Count(f => f.Id == "existing-coax"));
        Assert.False(With("  internet: { kind: modem, at: panel, cut-off: [] }\n").Has("existing-coax"));
    }

    [Fact]
    public void Service_over_something_else_takes_nothing_off_and_none_is_no_service()
    {
        var other = With("  internet: { kind: optical-unit, at: panel, over: other, cut-off: [TV1] }\n");
        Assert.Empty(other.Cabling.Service!.CutOff);
        Assert.DoesNotContain(other.Handover.Steps, s => s.Id is "service-cut" or "service-cap");
        Assert.DoesNotContain(other.Mounting.Hazards, h => h.Id == "live-internet");
        var none = With("  internet: { kind: none }\n");
        Assert.Null(none.Cabling.Service);
        Assert.Equal(InternetKind.None, none.Handover.ExistingInternet);
        Assert.DoesNotContain(none.Handover.Steps, s => s.Id.StartsWith("service", StringComparison.Ordinal) || s.Id == "internet");
    }

    [Fact]
    public void The_old_key_says_the_same_of_hazards_and_page()
    {
        var old = DemoPlans.House(Id, DemoJobs.Load().With(File, Service, "").With(File, "\nbonding:", "\nhandover: { existing-internet: coax }\nbonding:"));
        Assert.Equal(InternetKind.Coax, old.Handover.ExistingInternet);
        Assert.Contains(old.Mounting.Hazards, h => h.Id == "live-internet");
        Assert.Contains(old.Handover.Steps, s => s is { Id: "internet", Subject: "coax" });
        Assert.Null(old.Cabling.Service);
    }

    [Fact]
    public void A_filter_at_one_end_parts_the_two_signals()
    {
        const string outlet = "    TV1: { outlet: Living room, from: S1.1,";
        var jobs = Jobs("  internet: { kind: optical-unit, at: panel, connected: [TV1], cut-off: [TV2, TV3] }\n");
        Assert.Contains("service-shared", Read(jobs));
        Assert.Null(new JobReader(jobs, jobs.Parts()).Read(Id).Job);
        jobs = jobs.With(File, outlet, "    F1: { part: mobile-filter-694, from: S1.1 }\n    TV1: { outlet: Living room, from: F1,");
        Assert.DoesNotContain("service-shared", Read(jobs));
        Assert.NotNull(new JobReader(jobs, jobs.Parts()).Read(Id).Job);
    }
}
