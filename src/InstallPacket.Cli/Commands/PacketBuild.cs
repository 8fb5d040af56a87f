using InstallPacket.Drawings;
using InstallPacket.Packets;

namespace InstallPacket.Cli.Commands;

/// <summary>What became of one job.</summary>
/// <param name="Id">The job.</param>
/// <param name="Title">Its title, as far as known.</param>
/// <param name="Date">Its day of work, as far as known.</param>
/// <param name="State"><c>planned</c>, <c>stopped</c>, <c>study</c> (a desk study), <c>stale</c> (an old packet stands) or <c>not built</c>.</param>
/// <param name="Summary">Findings in words.</param>
/// <param name="Findings">Findings to print.</param>
/// <param name="Units">The units in which they are printed.</param>
/// <param name="Problem">A fault that is no finding; empty otherwise.</param>
/// <param name="Unchanged">Whether nothing had to be done.</param>
internal sealed record PacketResult(
    string Id, string Title, string Date, string State, string Summary, IReadOnlyList<Finding> Findings, JobUnits Units, string Problem,
        bool Unchanged)
{
    /// <summary>A job that this run was not asked to build.</summary>
    public static PacketResult NotAsked(string id, PacketManifest? manifest) =>
        new(id, manifest?.Title ?? id, manifest?.Date ?? "", manifest?.State ?? "not built", manifest?.Findings ?? "", [],
            JobUnits.Unknown, "", true);
}

/// <summary>Builds and writes one packet.</summary>
internal sealed class PacketBuild(PacketBuilder builder, OutputFolder output, InputHash inputs)
{
    public PacketResult Run(PlannedJob job)
    {
        if (job.Unchanged is { } same) return new(job.Id, same.Title, same.Date, same.State, same.Findings, [], job.Units, "", true);
        if (job.Plan is not { } plan) return Failed(job, "");
        if (OutputFolder.Takes(job.Id)) return Failed(job,
            $"the output folder has a file of its own called {job.Id}; rename the folder of the job");
        if (output.IsForeign(job.Id)) return Failed(job,
            $"the folder {output.PacketFolder(job.Id)} holds something that is not a packet; it is left alone. Choose another --out");
        var state = plan.State;
        var placed = InputHash.Placed(job.Findings);
        var manifest = new PacketManifest(plan.Job.Title,
            plan.Job.Date.ToString("yyyy-MM-dd", System.Globalization.CultureInfo.InvariantCulture), state,
            Summary.Count(job.Findings), inputs.Of(job.Id, placed), placed, []);
        try
        {
            var files = builder.Build(plan);
            manifest = manifest with { Files = [.. files.Select(ManifestFile.Of)] };
            output.Write(job.Id, files, manifest);
        }
        catch (Exception e) when (e is DocumentException or MissingGlyphException)
        {
            return Failed(job, e.Message);
        }
        catch (Exception e) when (Fault.Of(e) is not null)
        {
            return Failed(job, $"the packet could not be written: {Fault.Of(e)}");
        }
        return new(job.Id, manifest.Title, manifest.Date, state, manifest.Findings, job.Findings, job.Units, "", false);
    }

    // The packet of an earlier state stays where it is; the index says that it is stale.
    private PacketResult Failed(PlannedJob job, string problem)
    {
        var earlier = PacketManifest.Of(output.PacketFolder(job.Id));
        return new(job.Id, earlier?.Title ?? job.Id, earlier?.Date ?? "", earlier is null ? "not built" : "stale",
            Summary.Count(job.Findings), job.Findings, job.Units, problem, false);
    }
}
