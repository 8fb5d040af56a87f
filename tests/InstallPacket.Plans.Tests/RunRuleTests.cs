using InstallPacket.Tests;

namespace InstallPacket.Plans.Tests;

/// <summary>The edges of the rules of runs, each from just below its limit to just above it.</summary>
public class RunRuleTests
{
    private const string Job = "brook-terrace/job.yaml";
    private const string R3 = "path: [attic-board, attic-front, lounge], way: wall";

    // Two square corners of a cable of 70 mm bend radius: each bend begins 70 mm x tan 45 deg = 70 mm from its corner, so that the leg
    // between them is 140 mm at least. A corner of 90 and one of 45 deg take 70 mm + 70 mm x tan 22.5 deg = 98.995 mm.
    [Theory]
    [InlineData(0.139, 0, true)]
    [InlineData(0.141, 0, false)]
    [InlineData(0.0985, 1, true)]
    [InlineData(0.0995, 1, false)]
    public void Two_bends_need_the_room_of_both_between_their_corners(double legM, double rise, bool tooTight)
    {
        var points = $"    b1: [3.0 m, 3.0 m, 3.0 m]\n    b2: [{Metres(3 + legM)}, 3.0 m, 3.0 m]\n    b3: [{Metres(3 + legM + rise)}, 3.0 m, 2.0 m]\n";
        var routing = Routed("path: [attic-board, b0, b1, b2, b3, lounge], way: wall", "    b0: [3.0 m, 2.0 m, 3.0 m]\n" + points);
        var found = routing.Findings.Sorted.Where(f => f.Id == "corner-too-tight").ToArray();
        Assert.Equal(tooTight ? 1 : 0, found.Length);
        if (!tooTight) return;
        Assert.Equal(rise > 0 ? 0.098995 : 0.14, (double)found[0].Values["needed_m"]!, 6);
        Assert.Equal(legM, (double)found[0].Values["length_m"]!, 9);
    }

    private static string Metres(double value) => FormattableString.Invariant($"{value:0.0000} m");

    private static Planned<RoutingPlan> Routed(string path, string points)
    {
        var jobs = DemoJobs.Load().With(Job, R3, path).With(Job, "  wall-points:\n", points + "  wall-points:\n");
        var job = jobs.Job("brook-terrace");
        return new RoutingPlanner(job, CodeFamilies.BuiltIn.Of(job.Code), jobs.Parts()).Plan();
    }
}
