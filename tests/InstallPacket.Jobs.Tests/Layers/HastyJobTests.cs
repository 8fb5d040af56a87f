namespace InstallPacket.Jobs.Tests.Layers;

/// <summary>A job as somebody writes it in the car: each mistake is told once, and nothing that only follows from it.</summary>
public class HastyJobTests
{
    private const string Job = """
        format: 1
        title: Elm Court, two sets
        date: 2026-12-04
        code: us
        prepared-by: { name: Example Aerials (invented) }
        customer: { name: P. Quill (invented), address: 9 Elm Court, Tamarack Valley (invented) }
        siting: { place: 43.70 N, 99.05 W, ground: 1600 ft, surroundings: rural, obstructions: {}, power-lines: {} }
        reception: { stations: tamarack.csv, want: [kes-21] }
        routing:
          house: { width: 34 ft, depth: 26 ft, front: 180 true, eaves: 10 ft, ridge: 17 ft }
          places: { stack: "ridge, at the chimney", box: "west wall, 2 ft from the south corner, 3 ft up", closet: { room: Closet } }
        cabling:
          cable: rg6
          chain:
            A1: { part: antenna-uhf-panel }
            G1: { part: grounding-block, at: box, from: A1, run: { length: 40 ft, way: outside } }
            S1: { part: splitter-2, at: closet, from: G1, run: { length: 15 ft, existing: yes, cable: coax-unknown } }
            O1: { outlet: Lounge, from: S1, run: { length: 25, existing: yes } }
            O2: { outlet: Bed room, from: S1.2, run: { length: 30 ft, way: wall } }
        mounting:
          { at: stack, kind: chimney-lashing, part: chimney-strap-pair, mast: mast-38, mast-length: 6 ft, free-length: 4 ft, access: ladder-and-roof, on: the stack,
          wind: { speed: 105 mph, exposure: B }, fixings: [{ part: u-bolt-m8, count: 2, into: the antenna clamp }] }
        bonding: { connection: meter, conductor: bond-copper-10awg, mast-length: 16 ft, shield-length: 5 ft, by: the crew }
        """;

    [Fact]
    public void Each_mistake_is_told_once_and_nothing_that_follows_from_it() => Assert.Equal(
        ["unknown-key 6", "unknown-key 7", "wrong-type 10", "place-unclear 11", "unknown-reference 13", "unit-missing 18"],
        DemoJobs.Read(Job).Findings.Where(f => f.Severity == Severity.Stop).Select(f => $"{f.Id} {f.At.Line}"));

    [Fact]
    public void Family_gives_receiver_cable_and_outlet_where_nobody_names_them()
    {
        var full = JobInFull.Of(DemoJobs.Files().With("job/job.yaml", Job.Replace("  cable: rg6\n", "", StringComparison.Ordinal)), "job", new FindingList());
        Assert.Contains("  receiver: receiver-atsc  # built in\n", full, StringComparison.Ordinal);
        Assert.Contains("      part: outlet-f  # built in\n", full, StringComparison.Ordinal);
        Assert.Contains("      cable: coax-6  # built in\n", full, StringComparison.Ordinal);
        // The old run to O1 is not what the firm would lay.
        Assert.Contains("      cable: coax-unknown  # built in\n", full, StringComparison.Ordinal);
        Assert.DoesNotContain("receiver", JobInFull.Of(new MemoryJobFiles().With("job/job.yaml", Job), "job", new FindingList()), StringComparison.Ordinal);
    }
}
