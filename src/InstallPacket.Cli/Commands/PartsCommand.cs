namespace InstallPacket.Cli.Commands;

/// <summary><c>parts</c>: lists the parts that jobs may name, by kind and word, and copies one for change.</summary>
internal sealed class PartsCommand(ITerminal terminal, JobOptions jobs, PartsOptions options)
{
    private readonly FolderJobFiles _files = jobs.Files();

    public int Run()
    {
        if (options.Problem() is { Length: > 0 } problem) return Refuse(problem);
        var all = new PartListing(_files, options.Units is { } units ? Word.Read<UnitFamily>(units) : null).All();
        if (options.Copy is { } id) return Copy(all, id);
        var kind = options.Kind is { } word ? Word.Read<PartKind>(word) : null;
        var found = all.Where(p => (kind is null || p.Kind == kind) && PartListing.Fits(p, options.Words)).ToArray();
        foreach (var part in found) Print(part);
        if (found.Length == 0) return Refuse($"no part fits; there are {all.Count}, `installpacket parts` lists them all");
        terminal.Out.WriteLine(found.Length == 1 ? "1 part" : $"{found.Length} parts");
        return ExitCode.Done;
    }

    private void Print(ListedPart part)
    {
        terminal.Out.WriteLine(FindingPrinter.Safe($"{part.Id}  ({(part.Kind is { } kind ? Word.Of(kind) : "kind not known")})  {part.Name}"));
        if (part.Figures.Count > 0) terminal.Out.WriteLine(FindingPrinter.Safe("    " + string.Join("; ", part.Figures)));
        terminal.Out.WriteLine($"    {Place(part)}");
    }

    private int Copy(IReadOnlyList<ListedPart> all, string id)
    {
        if (all.FirstOrDefault(p => p.Id == id) is not { } part)
            return Refuse($"there is no part `{id}`{(NearestWord.Of(id, all.Select(p => p.Id)) is { } near ? $"; did you mean `{near}`?" : "")}");
        var called = options.As ?? id;
        if (all.FirstOrDefault(p => p.Id == called) is { } there && !SharedFolder.IsGeneric(there.At.File))
            return Refuse($"`{called}` is a part of your own already, in {Place(there)}; change it there, or give the copy another name with `--as`");
        var copy = new PartCopy(_files);
        if (copy.Lines(part, called) is not { } lines) return Refuse($"`{id}` does not stand in lines of its own in {Place(part)}; copy it by hand");
        if (copy.With(lines, called) is not { } text)
        {
            terminal.Out.Write(lines);
            return Refuse($"{PartCopy.Target} has another form or a mistake; nothing was written, put these lines below its `parts`");
        }
        SchemaFiles.Write(jobs.Jobs);
        Write(Path.Combine(jobs.Jobs, PartCopy.Target), _files.Read(PartCopy.Target, 1).State == FileState.Absent ? SchemaFiles.OfParts + text : text);
        terminal.Out.Write(lines);
        terminal.Out.WriteLine($"{PartCopy.Target} has this part now; it goes before the generic one of the same name. Put in your figures and how you know them.");
        return ExitCode.Done;
    }

    // Whole or not at all: the file may hold the work of years.
    private static void Write(string path, string text)
    {
        Directory.CreateDirectory(Path.GetDirectoryName(path)!);
        var draft = path + ".new";
        File.WriteAllText(draft, text);
        File.Move(draft, path, overwrite: true);
    }

    private static string Place(ListedPart part) => $"{part.At.File}, line {part.At.Line}";

    private int Refuse(string problem)
    {
        terminal.Error.WriteLine("installpacket: " + FindingPrinter.Safe(problem));
        return ExitCode.WrongCommandLine;
    }
}
