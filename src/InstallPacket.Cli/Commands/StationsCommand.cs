using InstallPacket.Calc.Quantities;
using InstallPacket.Calc.Siting;

namespace InstallPacket.Cli.Commands;

/// <summary>
/// <c>stations</c>: checks a station list of ours or the regulator's, lists the stations that are asked for, and saves them as a list of
/// ours.
/// </summary>
internal sealed class StationsCommand(ITerminal terminal, StationsOptions options)
{
    public int Run()
    {
        var (filter, problem) = options.Filter();
        if (filter is null) return Refuse(problem);
        var target = options.Save is { } path ? new SavedList(path, options.Replace) : null;
        if (target?.Problem() is { Length: > 0 } obstacle) return Refuse(obstacle);
        var file = new ListFile(options.File);
        if (file.File.State != FileState.Present) return Refuse(Unread(file.File.State));
        var foreign = RegulatorList.HasForm(file.File.Text);
        if (!foreign
            && options.Status.Count > 0) return Refuse($"`--status` goes with the regulator's list; {options.File} has our columns and states no status");
        var findings = new FindingList();
        var list = foreign ? RegulatorList.Read(file.File, filter, findings) : StationListReader.Read(file.File, filter, findings);
        new FindingPrinter(file, "").Print(terminal.Error, findings.Sorted);
        Print(list, filter);
        if (findings.AnyStop) return ExitCode.JobFailed;
        if (target is not null) Save(list, target);
        return ExitCode.Done;
    }

    private void Print(StationList list, StationFilter filter)
    {
        if (filter.From is { } from) PrintFrom(list.Stations, from.LatitudeDeg, from.LongitudeDeg);
        else foreach (var s in list.Stations) terminal.Out.WriteLine($"{FindingPrinter.Safe(s.Id),-16} RF {s.Channel,2}  {s.System,-8}  {FindingPrinter.Safe(s.Site)}");
        foreach (var remark in list.Remarks) terminal.Out.WriteLine("remark: " + remark);
        terminal.Out.WriteLine(list.Tally.ToString());
    }

    private void PrintFrom(IReadOnlyList<Station> stations, double latitudeDeg, double longitudeDeg)
    {
        var lines = stations.Select(s => (s, Line: Geodesic.Inverse(latitudeDeg, longitudeDeg, s.LatitudeDeg, s.LongitudeDeg)));
        foreach (var (s, line) in lines.OrderBy(l => l.Line.DistanceM).ThenBy(l => l.s.Id, StringComparer.Ordinal))
            terminal.Out.WriteLine($"{FindingPrinter.Safe(s.Id),-16} RF {s.Channel,2}  {UnitText.Number(line.DistanceM / 1000, 1),6} km  {UnitText.Number(CompassBearing.RoundForPrint(line.AzimuthDeg, 1), 1),5} deg true  {FindingPrinter.Safe(s.Site)}");
    }

    private void Save(StationList list, SavedList target)
    {
        string[] remarks = [$"Written by installpacket stations from {Path.GetFileName(options.File)}: {list.Tally}.", .. list.Remarks];
        target.Write(StationListWriter.Text(list.Stations, remarks));
        terminal.Out.WriteLine($"{options.Save} is written");
    }

    private string Unread(FileState state) => state switch
    {
        FileState.TooLarge => $"{options.File} is larger than {ListFile.Bound}; ask the regulator for a part of the country",
        FileState.NotText => $"{options.File} is neither a list of ours in UTF-8 nor the regulator's list",
        _ => $"there is no file {options.File} that can be read",
    };

    private int Refuse(string problem)
    {
        terminal.Error.WriteLine("installpacket: " + problem);
        return ExitCode.WrongCommandLine;
    }
}
