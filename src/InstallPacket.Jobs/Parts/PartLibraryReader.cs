using InstallPacket.Calc.Sources;

namespace InstallPacket.Jobs.Parts;

/// <summary>Reads the parts files below <c>_shared/parts</c>.</summary>
public static class PartLibraryReader
{
    /// <summary>Reads every <c>*.yaml</c> of the folder.</summary>
    /// <param name="files">The author's files.</param>
    /// <param name="findings">Receives what is wrong with them.</param>
    public static PartLibrary Read(IJobFiles files, FindingList findings)
    {
        var library = new PartLibrary();
        foreach (var path in files.List("_shared/parts").Where(p => p.EndsWith(".yaml", StringComparison.Ordinal)))
        {
            var file = files.Read(path, FileBounds.PartsBytes);
            if (!FileGate.Allows(file, FileBounds.PartsBytes, new(path, 0, 0), findings) || YamlGate.Load(file, findings) is not { } root) continue;
            foreach (var entry in new NodeChecker(findings).Group(root, PartCatalogue.File, "").Entries(PartCatalogue.Parts))
                if (Part(entry, findings) is { } part && !library.Add(part))
                    findings.Add(Severity.Stop, "duplicate-part", entry.At, ("part", part.Id), ("first", library.Find(part.Id)!.At.ToString()));
        }
        return library;
    }

    /// <summary>The part that an entry describes, or null when it does not say what it is.</summary>
    internal static Part? Part(Entry<CheckedGroup> entry, FindingList findings)
    {
        if (!entry.Value.Has(PartKeys.Kind) || !entry.Value.Has(PartKeys.Name)) return null;
        var part = PartCatalogue.Bind(entry);
        foreach (var figure in PartCatalogue.Figures(part.Kind).Where(f => entry.Value.Has(f) && !IsMarked(part, f)))
            findings.Add(Severity.Caution, "provenance-missing", entry.At, ("figure", figure.Name), ("part", entry.Name), ("marks", ProvenanceWord.All));
        return part;
    }

    private static bool IsMarked(Part part, Key figure) => part.Provenance.GetValueOrDefault(figure.Name)?.Mark is not null;
}
