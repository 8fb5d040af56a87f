using System.Text;

namespace InstallPacket.Jobs.Keys;

/// <summary>The reference page of keys, written from the catalogue.</summary>
public static class KeyReference
{
    /// <summary>The whole page as Markdown.</summary>
    /// <param name="example">A complete job, printed at the top.</param>
    public static string Page(string example)
    {
        var page = new StringBuilder("# Keys of a job file\n\nThis page is written from the key catalogue by `installpacket explain keys`; a test keeps it true. ");
        page.Append("In a path, NAME stands for a name that you choose.\n\n## A complete job\n\n```yaml\n").Append(example.Trim()).Append("\n```\n\n## Keys\n\n");
        page.Append("| Key | Needed | Holds | Meaning |\n|---|---|---|---|\n");
        foreach (var (path, key) in KeyCatalogue.AllKeys()) page.Append(Row(path, key));
        page.Append("\n## Keys of a part\n\nParts are defined in `_shared/parts/*.yaml` under `parts`.\n\n| Key | Needed | Holds | Meaning |\n|---|---|---|---|\n");
        foreach (var key in PartCatalogue.Part.Keys) page.Append(Row("parts.NAME." + key.Name, key));
        page.Append("\nWhich of them a part has, its `kind` decides; all parts have ")
            .AppendJoin(", ", PartKeys.Common.Keys.Select(k => $"`{k.Name}`")).Append(".\n\n| Kind | Keys besides |\n|---|---|\n");
        foreach (var kind in Enum.GetValues<PartKind>())
            page.Append($"| `{Word.Of(kind)}` | ").AppendJoin(", ", Own(kind).Select(k => $"`{k.Name}`")).Append(" |\n");
        page.Append("\n## Columns of a station list\n\nA CSV with a header row; the unit is part of the column's name.\n\n");
        page.Append("Needed: ").AppendJoin(", ", StationListReader.Required.Select(c => $"`{c}`")).Append(". May be left out: ");
        page.AppendJoin(", ", StationListReader.Optional.Select(c => $"`{c}`")).Append(".\n");
        page.Append("A row states at least one of `haat_m` and `above_sea_m`. `pattern` holds ").Append(PatternText.Expected).Append(".\n");
        return page.ToString();
    }

    private static IEnumerable<Key> Own(PartKind kind) => PartCatalogue.KeysOf(kind).Keys.Except(PartKeys.Common.Keys);

    /// <summary>What is known of one key, or null when there is no such key.</summary>
    /// <param name="path">Its path, with NAME or with a real name.</param>
    public static string? Of(string path)
    {
        var wanted = KeyPath.Plain(path).Split('.');
        var found = KeyCatalogue.AllKeys().Where(k => Fits(k.Path.Split('.'), wanted)).ToArray();
        if (found.Length == 0) return wanted.Length > 1 && OfNamed(wanted[..^1]) is { } map
            ? Text(map.Path + ".NAME", map.Key.Meaning, ((IMapKind)map.Key.Kind).Item, "named by the author") : null;
        var (name, key) = found[0];
        return Text(name, key.Meaning, key.Kind, key.Required ? "required" : key.Default is null ? "may be left out" : "default: "
            + key.Default);
    }

    private static (string Path, Key Key)? OfNamed(string[] wanted) =>
        KeyCatalogue.AllKeys().Where(k => k.Key.Kind is IMapKind && Fits(k.Path.Split('.'), wanted)).Select(k =>
            ((string, Key)?)k).FirstOrDefault();

    private static string Text(string name, string meaning, KeyKind kind, string need) =>
        $"{name}: {meaning}\n  holds: {ScalarChecker.Expectation(kind)}\n  {need}\n";

    private static bool Fits(string[] path, string[] wanted) =>
        path.Length == wanted.Length && path.Zip(wanted).All(p => p.First == "NAME" || p.First == p.Second);

    private static string Row(string path, Key key)
    {
        var needed = key.Required ? "yes" : key.Default is null ? "no" : $"no: `{key.Default}`";
        return $"| `{path}` | {needed} | {Escape(ScalarChecker.Expectation(key.Kind))} | {Escape(key.Meaning)} |\n";
    }

    private static string Escape(string text) => text.Replace("|", "\\|");
}
