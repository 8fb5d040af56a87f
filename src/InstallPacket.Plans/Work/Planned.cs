namespace InstallPacket.Plans.Work;

/// <summary>What a planner hands over: its plan, the workings behind it and what it found. A trial takes the plan and leaves the
/// rest.</summary>
/// <typeparam name="T">The plan of one domain.</typeparam>
/// <param name="Plan">The plan.</param>
/// <param name="Work">The workings.</param>
/// <param name="Findings">The findings.</param>
internal sealed record Planned<T>(T Plan, Workings Work, FindingList Findings);
