using InstallPacket.Calc.Quantities;
using InstallPacket.Calc.Siting;
using InstallPacket.Jobs;
using InstallPacket.Jobs.Stations;

namespace InstallPacket.Cli;

/// <summary><c>stations</c>: checks a station list, and lists its stations from an antenna when a job is named.</summary>
internal sealed class StationsCommand(ITerminal terminal, string jobs, string file, string? near)
{
    private const int MostBytes = 16 * 1024 * 1024;

    public int Run()
    {
        var full = Path.GetFullPath(file);
        var files = new FolderJobFiles(Path.GetDirectoryName(full)!, "");
        var read = files.Read(Path.GetFileName(full), MostBytes);
        if (read.State != FileState.Present) return Refuse($"{file} cannot be read as a station list ({read.State})");
        var findings = new FindingList();
        var stations = StationListReader.Read(read, findings);
        new FindingPrinter(files, "").Print(terminal.Error, findings.Sorted);
        var dropped = findings.Sorted.Count(f => f.Id == "station-row-dropped");
        var code = near is null ? List(stations) : ListFrom(stations, near);
        terminal.Out.WriteLine($"{stations.Count} stations kept, {dropped} rows dropped");
        return code != ExitCode.Done ? code : findings.AnyStop ? ExitCode.JobFailed : ExitCode.Done;
    }

    private int List(IReadOnlyList<Station> stations)
    {
        foreach (var s in stations) terminal.Out.WriteLine($"{s.Id,-16} RF {s.Channel,2}  {s.System,-8}  {s.Site}");
        return ExitCode.Done;
    }

    private int ListFrom(IReadOnlyList<Station> stations, string jobId)
    {
        var files = new FolderJobFiles(jobs, InstalledData.Jobs);
        var job = new JobReader(files, Jobs.Parts.PartLibraryReader.Read(files, new FindingList())).Read(jobId).Job;
        if (job is null) return Refuse($"the job {jobId} in {jobs} cannot be read; `installpacket check {jobId}` says why");
        var lines = stations.Select(s => (s, Line: Geodesic.Inverse(job.Siting.LatitudeDeg.Value, job.Siting.LongitudeDeg.Value, s.LatitudeDeg, s.LongitudeDeg)));
        foreach (var (s, line) in lines.OrderBy(l => l.Line.DistanceM).ThenBy(l => l.s.Id, StringComparer.Ordinal))
            terminal.Out.WriteLine($"{s.Id,-16} RF {s.Channel,2}  {UnitText.Number(line.DistanceM / 1000, 1),6} km  {UnitText.Number(CompassBearing.RoundForPrint(line.AzimuthDeg, 1), 1),5} deg true  {s.Site}");
        return ExitCode.Done;
    }

    private int Refuse(string problem)
    {
        terminal.Error.WriteLine("installpacket: " + problem);
        return ExitCode.WrongCommandLine;
    }
}
