namespace InstallPacket.Cli.Commands;

/// <summary>The mount of a job that is begun: what its kind needs, and no more.</summary>
/// <param name="asked">What kind of job.</param>
internal sealed class MountSketch(JobKindAsked asked)
{
    private const string ClampOnly = "  fixings: [{ part: u-bolt-m8, count: 2, into: the antenna clamp on the mast }]";

    private readonly bool _us = asked.Us;

    /// <summary>Where the mast stands, when it is not on an outer wall; empty otherwise.</summary>
    public static string Place(JobKindAsked asked) => asked.Mount switch
    {
        "chimney" => "Chimney", "roof" => "Roof beside the ridge", "ballast" => "Flat roof", "attic" => "Attic", _ => "",
    };

    /// <summary>The height of the antenna, where it follows from no place; empty otherwise.</summary>
    public static string AntennaHeight(JobKindAsked asked) => (asked.Mount, asked.Us) switch
    {
        ("chimney", true) => "27 ft", ("chimney", false) => "10 m", ("roof", true) => "23 ft", ("roof", false) => "9 m",
        ("ballast", true) => "17 ft", ("ballast", false) => "6.6 m", ("attic", true) => "20 ft", ("attic", false) => "6 m", _ => "",
    };

    /// <summary>The lines of <c>mounting</c>.</summary>
    public IEnumerable<string> Lines()
    {
        yield return "mounting:";
        if (asked.OnWall) yield return "  at: bracket";
        var (kind, part) = Kind();
        yield return $"  kind: {kind}\n  part: {part}\n  mast: {(asked.Mount == "ground" ? "mast-60" : _us ? "mast-38" : "mast-50")}";
        foreach (var length in Lengths()) yield return "  " + length;
        foreach (var line in OfKind()) yield return "  " + line;
        foreach (var line in Reached()) yield return "  " + line;
        yield return $"  on: {On()}   # what is it fixed to?";
        yield return Fixings();
        yield return "  survey: { roof: unknown, asbestos: unknown, behind: unknown }   # what did you find?";
    }

    private (string Kind, string Part) Kind() => asked.Mount switch
    {
        "eave" => ("eave-bracket", "eave-bracket-one-plate"), "gable" => ("gable-bracket", "gable-bracket"),
        "chimney" => ("chimney-lashing", "chimney-strap-pair"), "roof" => ("tripod", "tripod-90"),
        "ground" => ("ground-mast", "ground-mast-base"), "ballast" => ("ballast", "ballast-frame-120"),
        "attic" => ("attic", "wall-bracket"), _ => ("wall-bracket", "wall-bracket"),
    };

    private IEnumerable<string> Lengths()
    {
        var (mast, free, spacing) = (asked.Mount, _us) switch
        {
            ("eave", true) => ("5 ft", "30 in", ""), ("eave", false) => ("1.5 m", "800 mm", ""),
            ("chimney", true) => ("6 ft", "3 ft", ""), ("chimney", false) => ("2 m", "1 m", ""),
            ("roof", true) => ("5 ft", "3 ft", "20 in"), ("roof", false) => ("1.5 m", "900 mm", "500 mm"),
            ("ground", true) => ("14 ft", "3 ft", "11 ft"), ("ground", false) => ("5.5 m", "1 m", "4.5 m"),
            ("ballast", true) => ("5 ft", "3 ft", "20 in"), ("ballast", false) => ("1.5 m", "900 mm", "500 mm"),
            (_, true) => ("5 ft", "30 in", "2 ft"), (_, false) => ("1.5 m", "800 mm", "600 mm"),
        };
        yield return $"mast-length: {mast}";
        yield return $"free-length: {free}   # mast above its upper support";
        if (spacing.Length > 0) yield return $"spacing: {spacing}   # between the two supports of the mast";
    }

    private IEnumerable<string> OfKind()
    {
        if (asked.Mount == "chimney")
            yield return _us ? "chimney: { side: 32 in, height: 5 ft, strap-spacing: 3 ft, state: sound, allowed: yes }   # look at it; ask the local code"
                : "chimney: { side: 800 mm, height: 1.5 m, strap-spacing: 900 mm, state: sound, allowed: yes }   # look at it; ask the local code";
        if (asked.Mount == "ballast")
            yield return _us ? "ballast: { side: 4 ft, block: 35 lb }   # blocks: how many? roof-bears: what does the roof hold besides snow?"
                : "ballast: { side: 1.2 m, block: 20 kg }   # blocks: how many? roof-bears: what does the roof hold besides snow?";
        if (asked.Mount == "roof") yield return "roof-pitch: 25 deg";
        if (asked.Mount == "ground") yield return "# guys: { part: guy-wire-5, pretension: …, sets: [{ ring: …, count: 3, anchor-radius: … }], anchor: … }   # a high mast";
    }

    private IEnumerable<string> Reached()
    {
        if (!asked.HasFirm)
            yield return _us ? "wind: { speed: 105 mph, exposure: B }   # from the official map; nobody guesses it"
                : "wind: { speed: 24 m/s, exposure: III }   # from the official map; nobody guesses it";
        var overTheRoof = asked.Mount is "chimney" or "roof" or "ballast";
        if (overTheRoof || !asked.HasFirm) yield return overTheRoof ? "access: ladder-and-roof   # fall-protection: edge, harness or platform?" : "access: ladder";
        var height = (asked.Mount, _us) switch
        {
            ("chimney" or "roof", true) => "20 ft", ("chimney" or "roof", false) => "8 m", ("ballast", true) => "12 ft 6 in",
            ("ballast", false) => "5.2 m", ("attic", true) => "8 ft", ("attic", false) => "2.5 m", _ => "",
        };
        if (height.Length > 0) yield return $"work-height: {height}";
    }

    private string On() => asked.Mount switch
    {
        "chimney" => "the chimney, by the survey", "roof" => "the rafters, by the survey",
        "ballast" => "the membrane, on its protection mat", _ => "sound framing, by the survey",
    };

    private string Fixings()
    {
        if (asked.Mount is "chimney" or "ballast") return ClampOnly;
        var (count, into) = (asked.Mount switch { "eave" or "ground" => 4, "roof" => 12, _ => 8 }, asked.Mount == "roof" ? "the rafters" : "sound framing");
        var part = _us ? "part: lag-screw-3-8" : "part: hex-wood-screw-8x90";
        return $"  fixings: [{"{"} {part}, count: {count}, pilot: {(_us ? "1/4 in" : "5.5 mm")}, into: {into} {"}"}]   # what do they bite into?";
    }
}
