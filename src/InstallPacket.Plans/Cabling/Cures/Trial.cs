using InstallPacket.Jobs;
using InstallPacket.Jobs.Parts;

namespace InstallPacket.Plans;

/// <summary>A job with one thing changed.</summary>
/// <param name="What">The change in words.</param>
/// <param name="Job">The job after it.</param>
/// <param name="Adds">Parts that it adds.</param>
internal sealed record Trial(string What, Job Job, IReadOnlyList<Part> Adds);
