namespace InstallPacket.Jobs.Keys;

/// <summary>Looks up every name that a job uses: parts, points, runs, stations, elements of the chain.</summary>
/// <param name="parts">The library.</param>
/// <param name="stations">The names of stations; null when a list could not be read, and then no station is looked up.</param>
/// <param name="job">The job as checked.</param>
/// <param name="defined">The names written into each map of the job; a map that is not there at all has a finding already.</param>
/// <param name="findings">Receives what does not resolve.</param>
internal sealed class NameResolver(
    PartLibrary parts, IReadOnlyList<string>? stations, CheckedGroup job, IReadOnlyDictionary<Key, string[]> defined, FindingList findings)
{
    private readonly IReadOnlyList<Entry<CheckedGroup>> _chain = job.Maybe(JobKeys.Cabling)?.Value.Entries(CablingKeys.Chain) ?? [];

    // Points on walls are points like the others.
    private string[]? Points => defined.GetValueOrDefault(RoutingKeys.Points) is { } points ? [.. points, .. defined.GetValueOrDefault(RoutingKeys.WallPoints) ?? []] : null;

    public void Resolve(IEnumerable<UseOfName> uses)
    {
        CheckChain();
        foreach (var use in uses)
        {
            switch (use.Kind.Target)
            {
                case ReferenceTarget.Part: ResolvePart(use); break;
                case ReferenceTarget.Point: Among(use, Points, "point", "routing.points"); break;
                case ReferenceTarget.Run: Among(use, defined.GetValueOrDefault(RoutingKeys.Runs), "run", "routing.runs"); break;
                case ReferenceTarget.Station: Among(use, stations, "station", "the station list and reception.transmitters"); break;
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
                "parts are defined in _shared/parts", NearestWord.Hint(use.Name, near) + "define the part" + OrOneOf(near));
        }
        else if (fits.Length > 0 && !fits.Contains(part.Kind))
            findings.Add(Severity.Stop, "part-unfit", use.At, $"{use.Path} names `{use.Name}`, a part of the kind {Word.Of(part.Kind)}", "expected a part of the kind " + string.Join(" or ", fits.Select(Word.Of)),
                "name a part of that kind" + OrOneOf([.. parts.Parts.Values.Where(p => fits.Contains(p.Kind)).Select(p => p.Id).Order(StringComparer.Ordinal)], ": "));
    }

    // An element is a part that a signal passes; a part that does not exist has a finding already.
    private void CheckChain()
    {
        foreach (var e in _chain)
            if (e.Value.Maybe(ElementKeys.Part) is { } name && parts.Find(name.Value) is { } part and not ChainPart)
                findings.Add(Severity.Stop, "part-unfit", e.At, $"cabling.chain.{e.Name} is a part of the kind {Word.Of(part.Kind)}",
                    "a part that a signal passes, from the antenna to the outlets",
                    "take it out of the chain; cables are named by `routing.runs`, the receiver by `cabling.receiver`");
    }

    private void ResolveElement(UseOfName use)
    {
        var (name, port) = ElementName.Split(use.Name);
        var entry = _chain.FirstOrDefault(e => e.Name == name);
        if (entry is null)
        {
            Among(use with { Name = name }, defined.GetValueOrDefault(CablingKeys.Chain), "element", "cabling.chain");
            return;
        }
        var outputs = entry.Value.Maybe(ElementKeys.Part) is { } partName && parts.Find(partName.Value) is { } part ? (part as ChainPart)?.Outputs ?? 1 : 16;
        if (port < 1 || port > outputs)
            findings.Add(Severity.Stop, "port-unknown", use.At, $"{use.Path} names output {use.Name[(name.Length + 1)..]} of `{name}`", outputs == 1 ? $"`{name}` has 1 output" : $"`{name}` has {outputs} outputs",
                outputs == 1 ? $"write `{name}`" : $"write one of `{name}.1` to `{name}.{outputs}`");
    }

    private void Among(UseOfName use, IReadOnlyList<string>? known, string what, string where)
    {
        if (known is null || known.Contains(use.Name)) return;
        findings.Add(Severity.Stop, "unknown-reference", use.At, $"{use.Path} names the {what} `{use.Name}`, which is not defined", $"{what}s are defined in {where}",
            NearestWord.Hint(use.Name, known) + "define it" + OrOneOf(known));
    }

    private static string OrOneOf(IReadOnlyList<string> known, string before = ", or name one of: ") => known.Count == 0 ? "" : before + string.Join(", ", known.Take(20)) + (known.Count > 20 ? " and others" : "");
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
