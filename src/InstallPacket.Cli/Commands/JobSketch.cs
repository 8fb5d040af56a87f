using System.Globalization;
using System.Text;

namespace InstallPacket.Cli.Commands;

/// <summary>What kind of job is begun.</summary>
/// <param name="Family">Code family: <c>us</c> or <c>eu</c>.</param>
/// <param name="Mount">Where the antenna goes: one of <see cref="Mounts"/>; <c>desk</c> for a desk study.</param>
/// <param name="ExistingCable">Whether the cable of the house stays.</param>
/// <param name="Outlets">How many outlets.</param>
/// <param name="HasFirm">Whether a firm's file says what is the same for all jobs.</param>
/// <param name="Firm">The firm's name, where several share a folder; null otherwise.</param>
internal sealed record JobKindAsked(string Family, string Mount, bool ExistingCable, int Outlets, bool HasFirm, string? Firm)
{
    public static readonly string[] Families = ["us", "eu"];
    public static readonly string[] Mounts = ["eave", "wall", "gable", "chimney", "roof", "ground", "ballast", "attic", "desk"];
    public const int MostOutlets = 8;

    /// <summary>Whether feet, inches and American parts are the usual ones.</summary>
    public bool Us => Family == "us";

    /// <summary>Whether the mount is fixed to an outer wall, so that a place in words gives its height.</summary>
    public bool OnWall => Mount is "eave" or "wall" or "gable" or "ground";
}

/// <summary>Writes the shortest complete job of a kind: it plans as it stands, and what must be asked on site stands behind each line.</summary>
/// <param name="asked">What kind of job.</param>
internal sealed class JobSketch(JobKindAsked asked)
{
    private static readonly int[] SplitterWays = [2, 3, 4, 6, 8];

    private readonly StringBuilder _text = new();
    private readonly bool _us = asked.Us;

    /// <summary>The job file.</summary>
    public string Text()
    {
        Head();
        Siting();
        Reception();
        if (asked.Mount == "desk") return _text.ToString();
        Routing();
        Cabling();
        foreach (var line in new MountSketch(asked).Lines()) Line(line);
        Line("");
        Bonding();
        return _text.ToString();
    }

    /// <summary>The file of a firm of the family.</summary>
    public static string Firm(string family)
    {
        var us = family == "us";
        return $"""
            # What the firm always does. Any key of a job may stand here; a kit and a job go before it.
            code: {family}
            prepared-by: {"{"} name: Your firm, phone: "0" {"}"}
            siting: {"{"} surroundings: residential {"}"}
            cabling: {(us ? "{ receiver: receiver-atsc, fly-cable: coax-6, cable: coax-6, outlet: outlet-f }"
                : "{ receiver: receiver-dvb, fly-cable: coax-7mm-class-a, cable: coax-7mm-class-a, outlet: outlet-tv-iec }")}
            # Wind of your region, from the official map; a job on a hill or at the sea says its own.
            mounting: {(us ? "{ wind: { speed: 105 mph, exposure: B }, access: ladder }" : "{ wind: { speed: 24 m/s, exposure: III }, access: ladder }")}
            bonding: {(us ? "{ conductor: bond-copper-10awg, by: the crew up to the termination }"
                : "{ conductor: bond-copper-16mm2, by: a registered electrician }")}
            # Also useful here: reception.stations and siting.terrain of the region, materials (currency, tax, prices, stock, crew, hours).

            """.ReplaceLineEndings("\n");
    }

    private void Line(string line) => _text.Append(line).Append('\n');

    private void Head()
    {
        Line("format: 1");
        Line("title: An invented house, to be replaced   # what the job is, in one line");
        Line("date: 2026-06-01   # the planned day of work");
        if (asked.Firm is { } firm) Line($"firm: {firm}");
        if (!asked.HasFirm)
        {
            Line($"code: {asked.Family}");
            Line("prepared-by: { name: Your firm }");
        }
        Line("customer: { name: A customer (invented) }   # address, phone, note");
        Line("");
    }

    private void Siting()
    {
        Line(_us ? "siting:\n  place: 43.7000 N, 99.0500 W\n  ground: 1600 ft   # leave out where the firm has elevation tiles (terrain)"
            : "siting:\n  place: 56.3100 N, 14.2100 E\n  ground: 118 m   # leave out where the firm has elevation tiles (terrain)");
        if (MountSketch.AntennaHeight(asked) is { Length: > 0 } height) Line($"  antenna-height: {height}   # above the ground");
        if (asked.Mount == "attic") Line("  under-roof: tile   # which roof covers the antenna?");
        if (!asked.HasFirm) Line("  surroundings: residential   # city, residential, rural");
        Line("  obstructions: {}   # trees and buildings toward the transmitters; {} says that you looked and found none");
        if (asked.Mount != "desk") Line("  power-lines: {}   # overhead wires; {} says that you looked and found none");
        Line("");
    }

    private void Reception()
    {
        Line("reception:\n  # An invented station. A list of the region replaces it: stations: region.csv, and want: all within 60 km");
        Line(_us
            ? "  transmitters:\n    t21: { name: Channel Five, site: Kestrel Ridge, system: ATSC 1.0, raster: us-6, channel: 21, shows-as: 5.1, latitude: 43.2943 N,\n"
              + "           longitude: 99.378 W, power: 420 kW, height: 318 m, above-sea: 850 m, polarisation: horizontal }\n  want: [t21]"
            : "  transmitters:\n    mux-a: { name: Multiplex A, site: Storhammar, system: DVB-T2, mode: 256QAM 2/3, raster: eu-8, channel: 26, latitude: 56.125 N,\n"
              + "             longitude: 14.61 E, power: 50 kW, height: 240 m, above-sea: 365 m, polarisation: horizontal }\n  want: [mux-a]");
        if (asked.Mount != "desk") Line("");
    }

    private void Routing()
    {
        Line("routing:");
        var flat = asked.Mount == "ballast";
        var heights = (_us, flat) switch
        {
            (true, false) => "eaves: 12 ft, ridge: 20 ft", (true, true) => "eaves: 12 ft, ridge: 12 ft 6 in, roof: flat",
            (false, false) => "eaves: 5 m, ridge: 8 m", (false, true) => "eaves: 5 m, ridge: 5.2 m, roof: flat",
        };
        Line($"  house: {"{"} {(_us ? "width: 36 ft, depth: 28 ft" : "width: 11 m, depth: 8 m")}, front: 180 deg true, {heights} {"}"}   # a box; footprint for other forms");
        Line("  places:");
        if (asked.OnWall) Line("    bracket: " + asked.Mount switch
        {
            "eave" => _us ? "west wall, 6 ft from the south corner, at the eaves" : "west wall, 2 m from the south corner, at the eaves",
            "gable" => _us ? "west gable, 17 ft up" : "west gable, 7 m up",
            _ => _us ? "west wall, 6 ft from the south corner, 11 ft up" : "west wall, 2 m from the south corner, 4.5 m up",
        });
        Line(_us ? "    entry: west wall, 3 ft from the south corner, 5 ft up   # where the cable goes in" :
            "    entry: west wall, 1 m from the south corner, 1.5 m up   # where the cable goes in");
        Line("    panel: { room: Utility room }   # where the splitter is");
        if (MountSketch.Place(asked) is { Length: > 0 } place) Line($"    mast: {"{"} room: {place} {"}"}   # where does the mast stand?");
        Line($"  entries: {"{"} entry: {"{"} through: wall{(asked.ExistingCable ? ", existing: yes" : "")} {"}"} {"}"}");
        Line("");
    }

    private void Cabling()
    {
        Line("cabling:");
        if (!asked.HasFirm)
            Line(_us ? "  receiver: receiver-atsc\n  fly-cable: coax-6\n  cable: coax-6\n  outlet: outlet-f"
                : "  receiver: receiver-dvb\n  fly-cable: coax-7mm-class-a\n  cable: coax-7mm-class-a\n  outlet: outlet-tv-iec");
        Line("  chain:");
        Line($"    A1: {"{"} part: {(_us ? "antenna-vhf-uhf-combined" : "antenna-uhf-yagi-long")}{(asked.OnWall ? "" : ", at: mast")} {"}"}   # `installpacket parts` lists parts");
        var outside = asked.Mount == "attic" ? "attic" : "outside, drip-loops: [entry]";
        Line($"    G1: {"{"} part: grounding-block, at: entry, from: A1, run: {"{"} length: {(_us ? "20 ft" : "6 m")}, way: {outside} {"}"} {"}"}");
        var old = asked.ExistingCable ? ", cable: coax-unknown, existing: yes" : ", way: wall";
        var from = "G1";
        if (asked.Outlets > 1)
        {
            var ways = SplitterWays.First(n => n >= asked.Outlets);
            Line($"    S1: {"{"} part: splitter-{ways}, at: panel, from: G1, run: {"{"} length: {(_us ? "12 ft" : "4 m")}{old} {"}"} {"}"}");
            from = "S1";
        }
        for (var i = 1; i <= asked.Outlets; i++)
            Line(string.Create(CultureInfo.InvariantCulture,
                $"    TV{i}: {"{"} outlet: Room {i}, from: {(asked.Outlets > 1 ? $"{from}.{i}" : from)}, run: {"{"} length: {(_us ? "40 ft" : "12 m")}{old} {"}"}{(asked.ExistingCable ? ", existing: yes" : "")} {"}"}"));
        Line("");
    }

    private void Bonding()
    {
        Line("bonding:\n  connection: the building's bonding termination   # where is it?");
        Line($"  mast-length: {(asked.Mount == "attic" ? "0 m" : _us ? "20 ft" : "8 m")}\n  shield-length: {(_us ? "6 ft" : "2 m")}");
        if (!asked.HasFirm) Line(_us ? "  conductor: bond-copper-10awg\n  by: the crew up to the termination" : "  conductor: bond-copper-16mm2\n  by: a registered electrician");
    }
}
