using System.Text.RegularExpressions;
using InstallPacket.Calc.Quantities;
using InstallPacket.Calc.Siting;

namespace InstallPacket.Jobs.Reception;

/// <summary>
/// Turns what a job wants to receive into stations: an id, a name shown on the set, a site, or all within a distance. Each station keeps the
/// place of the wish that asks for it.
/// </summary>
/// <param name="stations">The stations of the list and of the job.</param>
/// <param name="from">Where the antenna stands [deg]; null when the job does not say it.</param>
/// <param name="reachM">How far stations are looked at [m].</param>
/// <param name="scalars">Reads the distance of a wish.</param>
/// <param name="findings">Receives wishes that name nothing, or too much.</param>
internal sealed partial class WantReader(
    IReadOnlyList<Station> stations, (double LatitudeDeg, double LongitudeDeg)? from, double reachM, ScalarChecker scalars, FindingList findings)
{
    private const string AllOf = "all of ";
    private static readonly QuantityKind Distance = new(Dimension.Length, 1000, 300000, "m");

    /// <summary>The ids of the stations, in the order of the wishes. A station that several wishes ask for stands once, unless it is named twice.</summary>
    /// <param name="wishes">What the job wants.</param>
    public IReadOnlyList<Sourced<string>> Read(IReadOnlyList<Sourced<string>> wishes)
    {
        var found = wishes.Select((w, i) => (Wish: w, Ids: Of(w, $"{JobKeys.Reception.Name}.{ReceptionKeys.Want.Name}[{i + 1}]"))).ToArray();
        var named = found.Where(f => f.Ids.Length == 1).Select(f => f.Ids[0]).ToHashSet(StringComparer.Ordinal);
        var seen = new HashSet<string>(StringComparer.Ordinal);
        var all = new List<Sourced<string>>();
        foreach (var (wish, ids) in found)
            foreach (var id in ids)
                if (ids.Length == 1 || (!named.Contains(id) && seen.Add(id))) all.Add(new(id, wish.At));
        return all;
    }

    private string[] Of(Sourced<string> wish, string path)
    {
        var text = wish.Value.Trim();
        if (stations.Any(s => s.Id == text)) return [text];
        if (Within().Match(text) is { Success: true } within) return AllWithin(wish, within.Groups["distance"].Value, path);
        if (text.StartsWith(AllOf, StringComparison.Ordinal))
            return Ids(s => Same(s.Site, text[AllOf.Length..])) is { Length: > 0 } site ? site : Unknown(wish, path, text[AllOf.Length..], stations.Select(s => s.Site));
        var named = InReach([.. stations.Where(s => Same(s.Name, text) || Same(s.ShowsAs, text))]);
        var sited = Ids(s => Same(s.Site, text));
        if (named.Length == 0 && sited.Length > 0) return sited;
        if (named.Length == 1 && (sited.Length == 0 || sited.SequenceEqual(named))) return named;
        if (named.Length > 0) return Ambiguous(wish, path, [.. named.Union(sited)]);
        return Unknown(wish, path, text, stations.SelectMany(s => new[] { s.Id, s.Name, s.Site, s.ShowsAs }));
    }

    private string[] AllWithin(Sourced<string> wish, string distance, string path)
    {
        if (scalars.Read(new(wish.At, distance, false), Distance, path) is not double mostM || from is null) return [];
        var ids = Ids(s => DistanceM(s) <= mostM);
        if (ids.Length == 0 && stations.Count == 0) findings.Add(Severity.Stop, "want-finds-none", "no-list", wish.At, ("path", path));
        else if (ids.Length == 0)
            findings.Add(Severity.Stop, "want-finds-none", wish.At, ("path", path), ("most_km", mostM / 1000), ("stations", stations.Count),
                ("nearest", stations.MinBy(DistanceM)!.Id), ("distance_km", stations.Min(DistanceM) / 1000));
        return ids;
    }

    // A name that is used again far away is meant where it can be received.
    private string[] InReach(Station[] named)
    {
        var near = from is null ? named : [.. named.Where(s => DistanceM(s) <= reachM)];
        return [.. (near.Length > 0 ? near : named).Select(s => s.Id)];
    }

    private string[] Ambiguous(Sourced<string> wish, string path, string[] ids)
    {
        var which = stations.Where(s => ids.Contains(s.Id)).Select(s => $"{s.Id} ({s.Name}, {s.Site}, RF {s.Channel})");
        findings.Add(Severity.Stop, "want-ambiguous", wish.At, ("path", path), ("written", wish.Value), ("stations", which));
        return [];
    }

    private string[] Unknown(Sourced<string> wish, string path, string asked, IEnumerable<string> known)
    {
        var ids = stations.Select(s => s.Id).ToArray();
        findings.Add(Severity.Stop, "unknown-reference", "wish", wish.At, ("path", path), ("name", asked),
            ("near", NearestWord.Of(asked, known.Where(k => k.Length > 0).Distinct(StringComparer.Ordinal))), ("known", ids.Take(NameResolver.MostNames)),
            ("more", ids.Length > NameResolver.MostNames));
        return [];
    }

    private string[] Ids(Func<Station, bool> fits) => [.. stations.Where(fits).Select(s => s.Id)];

    private double DistanceM(Station s) => Geodesic.Inverse(from!.Value.LatitudeDeg, from.Value.LongitudeDeg, s.LatitudeDeg, s.LongitudeDeg).DistanceM;

    private static bool Same(string said, string asked) => said.Length > 0 && string.Equals(said, asked, StringComparison.OrdinalIgnoreCase);

    [GeneratedRegex("^all within (?<distance>.+)$", RegexOptions.ExplicitCapture)]
    private static partial Regex Within();
}
