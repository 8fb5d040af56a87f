using InstallPacket.Calc.Sources;

namespace InstallPacket.Jobs.Parts;

/// <summary>Reads the parts of the firm, below <c>_shared/parts</c>, and the generic ones that come with the program.</summary>
public static class PartLibraryReader
{
    /// <summary>Reads every parts file. A part of the firm goes before a generic one of the same name.</summary>
    /// <param name="files">The author's files.</param>
    /// <param name="findings">Receives what is wrong with them.</param>
    public static PartLibrary Read(IJobFiles files, FindingList findings)
    {
        var library = new PartLibrary();
        foreach (var path in SharedFolder.Parts(files))
        {
            var file = files.Read(path, FileBounds.PartsBytes);
            if (!FileGate.Allows(file, FileBounds.PartsBytes, new(path, 0, 0), findings) || IsTwin(files, file)
                || YamlGate.Load(file, findings) is not { } root) continue;
            foreach (var entry in new NodeChecker(findings).Group(root, PartCatalogue.File, "").Entries(PartCatalogue.Parts)) Add(library,
                entry, findings);
        }
        CheckConnectors(library, findings);
        CheckFixings(library, findings);
        return library;
    }

    // A generic file that the firm has word for word adds nothing, and reading it takes time.
    private static bool IsTwin(IJobFiles files, JobFile file) => SharedFolder.IsGeneric(file.Path)
        && files.Read(SharedFolder.Installed(file.Path), FileBounds.PartsBytes) is { State: FileState.Present } own && own.Text == file.Text;

    // A mistake in one part stops the jobs that use it, and no other; a generic part does not step in for a firm's own with a mistake.
    private static void Add(PartLibrary library, Entry<CheckedGroup> entry, FindingList findings)
    {
        if (SharedFolder.IsGeneric(entry.At.File) && (library.Find(entry.Name) is not null || library.IsBroken(entry.Name))) return;
        if (Part(entry, findings) is not { } part) library.Break(entry.Name);
        else if (!library.Add(part))
            findings.Add(Severity.Stop, "duplicate-part", entry.At, ("part", part.Id), ("first", library.Find(part.Id)!.At.ToString()));
    }

    private static void CheckConnectors(PartLibrary library, FindingList findings)
    {
        string[] connectors = [.. library.Parts.Values.OfType<ConnectorPart>().Select(c => c.Id).Order(StringComparer.Ordinal)];
        foreach (var cable in library.Parts.Values.OfType<CablePart>().Where(c => c.Connector is { } name
            && !connectors.Contains(name)).ToList())
        {
            findings.Add(Severity.Stop, "unknown-reference", "connector", cable.At, ("part", cable.Id), ("name", cable.Connector!),
                ("near", NearestWord.Of(cable.Connector!, connectors)), ("known", connectors.Take(NameResolver.MostNames)),
                    ("more", connectors.Length > NameResolver.MostNames));
            library.TakeOut(cable);
        }
    }

    private static void CheckFixings(PartLibrary library, FindingList findings)
    {
        string[] fixings = [.. library.Parts.Values.OfType<FixingPart>().Select(f => f.Id).Order(StringComparer.Ordinal)];
        foreach (var part in library.Parts.Values.OfType<ChainPart>().Where(p => p.FixesWith is { } with
            && !fixings.Contains(with.Part)).ToList())
        {
            findings.Add(Severity.Stop, "unknown-reference", "fixes-with", part.At, ("part", part.Id), ("name", part.FixesWith!.Part),
                ("near", NearestWord.Of(part.FixesWith.Part, fixings)), ("known", fixings.Take(NameResolver.MostNames)),
                    ("more", fixings.Length > NameResolver.MostNames));
            library.TakeOut(part);
        }
    }

    /// <summary>The part that an entry describes, or null when it does not say what it is.</summary>
    internal static Part? Part(Entry<CheckedGroup> entry, FindingList findings)
    {
        if (!entry.Value.Sound || !entry.Value.Has(PartKeys.Kind)) return null;
        if (!PartCatalogue.KeysOf(entry.Value.Get(PartKeys.Kind)).Keys.Where(k => k.Required).All(entry.Value.Has)) return null;
        var part = PartCatalogue.Bind(entry);
        foreach (var figure in PartCatalogue.Figures(part.Kind).Where(f => entry.Value.Wrote(f) && !IsMarked(part, f)))
            findings.Add(Severity.Caution, "provenance-missing", entry.At, ("figure", figure.Name), ("part", entry.Name),
                ("marks", ProvenanceWord.All));
        return part;
    }

    private static bool IsMarked(Part part, Key figure) => part.Provenance.GetValueOrDefault(figure.Name)?.Mark is not null;
}
