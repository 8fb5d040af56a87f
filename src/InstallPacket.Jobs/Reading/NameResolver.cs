using InstallPacket.Jobs.Catalogue;
using InstallPacket.Jobs.Parts;
using InstallPacket.Jobs.Stations;

namespace InstallPacket.Jobs.Reading;

/// <summary>Looks up every name that a job uses: parts, points, runs, stations, elements of the chain.</summary>
internal sealed class NameResolver(PartLibrary parts, IReadOnlyList<Station> stations, CheckedGroup job, FindingList findings)
{
    private readonly string[] _points = Names(job.Group("routing"), "points");
    private readonly string[] _runs = Names(job.Group("routing"), "runs");
    private readonly IReadOnlyList<CheckedEntry> _chain = job.Group("cabling")?.Entries("chain") ?? [];

    public void Resolve(IEnumerable<UseOfName> uses)
    {
        foreach (var use in uses)
        {
            switch (use.Kind.Target)
            {
                case ReferenceTarget.Part: ResolvePart(use); break;
                case ReferenceTarget.Point: Among(use, _points, "point", "routing.points"); break;
                case ReferenceTarget.Run: Among(use, _runs, "run", "routing.runs"); break;
                case ReferenceTarget.Station: Among(use, [.. stations.Select(s => s.Id)], "station", "the station list and reception.transmitters"); break;
                default: ResolveElement(use); break;
            }
        }
    }

    private void ResolvePart(UseOfName use)
    {
        var fits = use.Kind.PartKinds;
        var part = parts.Find(use.Name);
        if (part is null)
        {
            var near = parts.Parts.Values.Where(p => fits.Length == 0 || fits.Contains(p.Kind)).Select(p => p.Id).Order(StringComparer.Ordinal).ToArray();
            findings.Add(Severity.Stop, "unknown-reference", use.At, $"{use.Path} names the part `{use.Name}`, which is not in the library",
                "parts are defined in _shared/parts", NearestWord.Hint(use.Name, near) + "Define the part, or name one of: " + string.Join(", ", near.Take(12)));
        }
        else if (fits.Length > 0 && !fits.Contains(part.Kind))
            findings.Add(Severity.Stop, "part-unfit", use.At, $"{use.Path} names `{use.Name}`, which is a {part.Kind}", "expected a part of the kind " + string.Join(" or ", fits),
                "name a part of that kind");
    }

    private void ResolveElement(UseOfName use)
    {
        var (name, port) = ElementName.Split(use.Name);
        var entry = _chain.FirstOrDefault(e => e.Name == name);
        if (entry is null)
        {
            Report(use, name, [.. _chain.Select(e => e.Name)], "element", "cabling.chain");
            return;
        }
        var outputs = entry.Group.Maybe<string>("part") is { } partName && parts.Find(partName.Value) is { } part ? part.Outputs : 16;
        if (port < 1 || port > outputs)
            findings.Add(Severity.Stop, "port-unknown", use.At, $"{use.Path} names output {use.Name[(name.Length + 1)..]} of `{name}`", $"`{name}` has {outputs} outputs",
                $"write `{name}.1` to `{name}.{outputs}`");
    }

    private void Among(UseOfName use, string[] known, string what, string where)
    {
        if (!known.Contains(use.Name)) Report(use, use.Name, known, what, where);
    }

    private void Report(UseOfName use, string name, string[] known, string what, string where) =>
        findings.Add(Severity.Stop, "unknown-reference", use.At, $"{use.Path} names the {what} `{name}`, which is not defined", $"{what}s are defined in {where}",
            NearestWord.Hint(name, known) + $"Define it, or name one of: {string.Join(", ", known.Take(20))}");

    private static string[] Names(CheckedGroup? group, string key) => group is null ? [] : [.. group.Entries(key).Select(e => e.Name)];
}

/// <summary>Element names with a port: <c>S1.2</c>.</summary>
internal static class ElementName
{
    /// <summary>Name and output; output 1 when none is written, 0 when it is not a number.</summary>
    public static (string Name, int Port) Split(string text)
    {
        var dot = text.IndexOf('.');
        if (dot < 0) return (text, 1);
        return (text[..dot], int.TryParse(text.AsSpan(dot + 1), System.Globalization.NumberStyles.None, System.Globalization.CultureInfo.InvariantCulture, out var port) ? port : 0);
    }
}
