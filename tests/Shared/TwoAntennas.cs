namespace InstallPacket.Tests;

/// <summary>The job of a demo house with a second antenna: UHF on the mast head, VHF below it, joined by a combiner.</summary>
internal static class TwoAntennas
{
    public const string Job = "alder-lane/job.yaml";

    /// <summary>Changes the job.</summary>
    /// <param name="loop">More figures of the run to the second input, with a comma in front.</param>
    /// <param name="before">Lines of the chain before the combiner.</param>
    /// <param name="first">What feeds the first input.</param>
    public static DemoJobs Joined(string loop, string before = "", string first = "A1") => DemoJobs.Load()
        .With(Job, "    A1: { part: antenna-vhf-uhf-combined, at: mast-head }\n",
            "    A1: { part: antenna-uhf-yagi-long, at: mast-head }\n    A2: { part: antenna-vhf-high-yagi, at: mast-low }\n" + before
            + $"    C1: {{ part: combiner-uhf-vhf, at: mast-head, from: {first}, second: A2, second-run: RV }}\n")
        .With(Job, "at: mast-foot, from: A1, run: R1 }", "at: mast-foot, from: C1, run: R1 }")
        .With(Job, "    mast-foot: [41 ft, 14 ft, 25 ft]\n", "    mast-foot: [41 ft, 14 ft, 25 ft]\n    mast-low: [41 ft, 14 ft, 28 ft]\n")
        .With(Job, "  runs:\n", $"  runs:\n    RV: {{ cable: coax-6, path: [mast-low, mast-head], way: outside{loop} }}\n");
}
