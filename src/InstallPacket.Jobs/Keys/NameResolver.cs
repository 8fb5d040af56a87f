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
    /// <summary>So many of the names that are there are listed.</summary>
    public const int MostNames = 20;

    private static readonly string ChainPath = $"{JobKeys.Cabling.Name}.{CablingKeys.Chain.Name}.";
    private readonly HashSet<string> _broken = new(StringComparer.Ordinal);

    // A name that stands once and is used often (the cable of all runs) is told once.
    private readonly HashSet<(SourceSpan, string)> _told = [];
    private readonly IReadOnlyList<Entry<CheckedGroup>> _chain = job.Maybe(JobKeys.Cabling)?.Value.Entries(CablingKeys.Chain) ?? [];

    // Points on walls are points like the others.
    private string[] Points =>
        [.. new Key[] { RoutingKeys.Points, RoutingKeys.WallPoints, RoutingKeys.Places }.SelectMany(k => defined.GetValueOrDefault(k) ?? [])];

    public void Resolve(IEnumerable<UseOfName> uses)
    {
        CheckChain();
        foreach (var use in uses)
        {
            switch (use.Kind.Target)
            {
                case ReferenceTarget.Part: ResolvePart(use); break;
                case ReferenceTarget.Point: Among(use, Points, "point"); break;
                case ReferenceTarget.Run: Among(use, defined.GetValueOrDefault(RoutingKeys.Runs), "run"); break;
                case ReferenceTarget.Station: Among(use, stations, "station"); break;
                default: ResolveElement(use); break;
            }
        }
    }

    private void ResolvePart(UseOfName use)
    {
        var fits = use.Kind.PartKinds;
        var part = parts.Find(use.Name);
        if (part is null && parts.IsBroken(use.Name))
        {
            // Once a part: its mistakes are what must be corrected.
            if (_broken.Add(use.Name)) findings.Add(Severity.Stop, "unknown-reference", "broken-part", use.At, ("path", use.Path),
                ("name", use.Name));
        }
        else if (part is null)
        {
            if (!_told.Add((use.At, use.Name))) return;
            string[] near = [.. Fitting(use).OrderByDescending(id => SharedWords(use.Name, id))];
            findings.Add(Severity.Stop, "unknown-reference", "part", use.At, ("path", use.Path), ("name", use.Name),
                ("near", NearestWord.Of(use.Name, near)), ("known", near.Take(MostNames)), ("more", near.Length > MostNames));
        }
        else if (fits.Length > 0 && !fits.Contains(part.Kind))
            findings.Add(Severity.Stop, "part-unfit", "use", use.At, ("path", use.Path), ("part", use.Name), ("kind", Word.Of(part.Kind)),
                ("kinds", fits.Select(Word.Of)), ("known", Fitting(use).Take(MostNames)), ("more", Fitting(use).Count() > MostNames));
    }

    // What an element of the chain names is a part that a signal passes.
    private IEnumerable<string> Fitting(UseOfName use)
    {
        var kinds = use.Kind.PartKinds;
        var inChain = use.Path.StartsWith(ChainPath, StringComparison.Ordinal);
        return parts.Parts.Values.Where(p => (kinds.Length == 0 || kinds.Contains(p.Kind)) && (!inChain || p is ChainPart)).Select(p => p.Id)
            .Order(StringComparer.Ordinal);
    }

    // "splitter-5" is most likely one of the splitters.
    private static int SharedWords(string written, string id)
    {
        var words = written.ToLowerInvariant().Split('-');
        return id.Split('-').Count(words.Contains);
    }

    // An element is a part that a signal passes; a part that does not exist has a finding already.
    private void CheckChain()
    {
        foreach (var e in _chain)
            if (e.Value.Maybe(ElementKeys.Part) is { } name && parts.Find(name.Value) is { } part and not ChainPart)
                findings.Add(Severity.Stop, "part-unfit", "chain", e.At, ("element", e.Name), ("kind", Word.Of(part.Kind)));
    }

    private void ResolveElement(UseOfName use)
    {
        var (name, port) = ElementName.Split(use.Name);
        var entry = _chain.FirstOrDefault(e => e.Name == name);
        if (entry is null)
        {
            Among(use with { Name = name }, defined.GetValueOrDefault(CablingKeys.Chain), "element");
            return;
        }
        var outputs = entry.Value.Maybe(ElementKeys.Part) is { } partName && parts.Find(partName.Value) is { } part
            ? (part as ChainPart)?.Outputs ?? 1 : 16;
        if (port < 1 || port > outputs)
            findings.Add(Severity.Stop, "port-unknown", use.At, ("path", use.Path), ("port", use.Name[(name.Length + 1)..]),
                ("element", name),
                ("outputs", outputs));
    }

    private void Among(UseOfName use, IReadOnlyList<string>? known, string way)
    {
        if (known is null || known.Contains(use.Name) || !_told.Add((use.At, use.Name))) return;
        findings.Add(Severity.Stop, "unknown-reference", way, use.At, ("path", use.Path), ("name", use.Name),
            ("near", NearestWord.Of(use.Name, known)), ("known", known.Take(MostNames)), ("more", known.Count > MostNames));
    }
}

/// <summary>Element names with a port: <c>S1.2</c>.</summary>
internal static class ElementName
{
    /// <summary>Name and output; output 1 when none is written, 0 when it is not a number.</summary>
    public static (string Name, int Port) Split(string text)
    {
        var dot = text.IndexOf('.');
        if (dot < 0) return (text, 1);
        return (text[..dot],
            int.TryParse(text.AsSpan(dot + 1), System.Globalization.NumberStyles.None, System.Globalization.CultureInfo.InvariantCulture,
            out var port) ? port : 0);
    }
}
