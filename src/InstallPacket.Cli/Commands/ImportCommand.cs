using System.Globalization;
using InstallPacket.Calc.Sources;

namespace InstallPacket.Cli.Commands;

/// <summary><c>import</c>: turns a table of addresses into job folders, a row each; each row is accounted for, and nothing is written over.</summary>
/// <param name="terminal">Where it prints.</param>
/// <param name="jobs">The jobs folder.</param>
/// <param name="file">The table.</param>
/// <param name="firm">A firm of <c>_shared/firms</c>, or null.</param>
/// <param name="date">The day of work of rows that name none, or null.</param>
internal sealed class ImportCommand(ITerminal terminal, string jobs, string file, string? firm, string? date)
{
    private const int MostRows = 2000;
    private static readonly char[] Signs = [';', '\t'];
    private static readonly char[] Formula = ['=', '+', '@'];

    public int Run()
    {
        var table = new ListFile(file).File;
        if (table.State != FileState.Present) return Refuse(table.State switch
        {
            FileState.NotText => $"{file} is not UTF-8 text; save the table as CSV in UTF-8",
            FileState.TooLarge => $"{file} is larger than {ListFile.Bound}",
            _ => $"there is no file {file}",
        });
        var files = new FolderJobFiles(jobs, InstalledData.Jobs);
        var records = Records(table.Text);
        if (records.Count < 2) return Refuse($"{file} has no rows: the first row names the columns, each further one is a house");
        if (records.Count - 1 > MostRows) return Refuse(string.Create(CultureInfo.InvariantCulture, $"{file} has {records.Count - 1} rows; at most {MostRows} are read"));
        var map = ImportMap.Read(files, firm);
        if (map.Problem(records[0].Fields) is { Length: > 0 } problem) return Refuse($"{file}: {problem}");
        var parts = PartLibraryReader.Read(files, new FindingList());
        var written = 0;
        foreach (var record in records.Skip(1))
        {
            var (name, outcome) = Row(files, parts, map, records[0].Fields, record);
            if (outcome.Length == 0) written++;
            terminal.Out.WriteLine(string.Create(CultureInfo.InvariantCulture, $"row {record.Line}  {(outcome.Length == 0 ? "written" : "skipped")}  {name}{(outcome.Length == 0 ? "" : ": " + outcome)}"));
        }
        terminal.Out.WriteLine(string.Create(CultureInfo.InvariantCulture, $"{written} of {records.Count - 1} rows are jobs now"));
        return written == records.Count - 1 ? ExitCode.Done : ExitCode.JobFailed;
    }

    private (string Name, string Outcome) Row(FolderJobFiles files, PartLibrary parts, ImportMap map, IReadOnlyList<string> header, CsvRecord record)
    {
        if (record.Fields.Count != header.Count)
            return ("", string.Create(CultureInfo.InvariantCulture, $"it has {record.Fields.Count} fields, the header has {header.Count}; put text with a comma in quotes"));
        var risky = record.Fields.FirstOrDefault(f => f.Length > 0 && Formula.Contains(f[0]));
        if (risky is not null) return ("", $"`{risky}` is a formula of a spreadsheet, not a value");
        var values = map.Values(header, record.Fields);
        var name = ImportMap.FolderName(values.GetValueOrDefault(ImportMap.Folder) ?? values.GetValueOrDefault("customer.address") ?? "");
        if (name.Length == 0) return ("", "it names no folder and no address");
        if (Directory.Exists(Path.Combine(jobs, name))) return (name, "the folder is there already; it is left alone");
        var text = ImportMap.Job(values, firm, date);
        var reading = new JobReader(new OneMoreJob(files, name, text), parts).Read(name);
        if (reading.Job is null)
        {
            var stops = reading.Findings.Where(f => f.Severity == Severity.Stop).ToArray();
            return (name, $"{stops.Length} {(stops.Length == 1 ? "stop" : "stops")}: " + string.Join("; ", stops.Take(3).Select(ImportMap.Said)));
        }
        Directory.CreateDirectory(Path.Combine(jobs, name));
        File.WriteAllText(Path.Combine(jobs, name, "job.yaml"), SchemaFiles.OfJob + text);
        return (name, "");
    }

    // Tables of some countries have semicolons, others tabs between the fields: the signs change places for the reading and back.
    private static IReadOnlyList<CsvRecord> Records(string text)
    {
        var header = text.Split('\n')[0];
        var sign = Signs.FirstOrDefault(s => header.Count(c => c == s) > header.Count(c => c == ','));
        if (sign == default) return CsvText.Records(text);
        string Swapped(string t) => string.Concat(t.Select(c => c == sign ? ',' : c == ',' ? sign : c));
        return [.. CsvText.Records(Swapped(text)).Select(r => r with { Fields = [.. r.Fields.Select(Swapped)] })];
    }

    private int Refuse(string problem)
    {
        terminal.Error.WriteLine("installpacket: " + problem);
        return ExitCode.WrongCommandLine;
    }

    // The jobs folder with one job more, so that a row is read before anything is written.
    private sealed class OneMoreJob(FolderJobFiles files, string name, string text) : IJobFiles
    {
        public JobFile Read(string path, int maxBytes) => path == name + "/job.yaml" ? new(path, FileState.Present, text) : files.Read(path, maxBytes);

        public IReadOnlyList<string> List(string folder) => files.List(folder);

        public Stream? Open(string path) => files.Open(path);
    }
}
