using InstallPacket.Calc.Quantities;

namespace InstallPacket.Jobs.Catalogue;

/// <summary>
/// Every key of a job file, declared once. The reader's checks, the hints, the JSON Schema and the reference page come from here.
/// Top-level keys are the domain words of the project.
/// </summary>
public static class KeyCatalogue
{
    /// <summary>The number of the job format that this program reads.</summary>
    public const int Format = 1;

    /// <summary>The whole job file.</summary>
    public static readonly GroupKind Job = new(
        new("format", new IntegerKind(Format, Format), "The job format that the file is written in.", Required: true),
        new("title", new TextKind(120), "What the job is, in one line.", Required: true),
        new("date", new DateKind(), "The planned day of work; the magnetic declination is computed for it.", Required: true),
        new("code", new WordKind("us", "eu"), "The code family whose rules the packet quotes.", Required: true),
        new("units", new WordKind("us", "metric"), "The units that the packet prints.", Required: true),
        new("paper", new WordKind("letter", "a4"), "The paper of the PDF; `letter` for code `us`, `a4` otherwise, when absent."),
        new("level-unit", new WordKind("dBuV", "dBmV", "dBm"), "The unit in which levels are printed.", Default: "dBuV"),
        new("language", new TextKind(35), "The language of the packet, by the name of its file in the theme's `words` folder; that of the code family when absent: `en-US` for `us`, `en-GB` for `eu`."),
        new("prepared-by", HandoverKeys.Party, "The firm that plans and installs.", Required: true),
        new("customer", HandoverKeys.Party, "For whom.", Required: true),
        new("siting", SitingKeys.Section, "Where the antenna stands and what stands in its way.", Required: true),
        new("reception", ReceptionKeys.Section, "Which transmitters are wanted.", Required: true),
        new("cabling", CablingKeys.Section, "The chain of parts from the antenna to the outlets.", Required: true),
        new("routing", RoutingKeys.Section, "Where the cable runs in the house.", Required: true),
        new("mounting", MountingKeys.Section, "What holds the antenna.", Required: true),
        new("bonding", BondingKeys.Section, "How mast and cable are bonded.", Required: true),
        new("materials", MaterialsKeys.Section, "What else to bring."),
        new("handover", HandoverKeys.Section, "What the customer is told."));

    /// <summary>Every key with its full path, in the order of the file; named things appear as <c>NAME</c>.</summary>
    public static IReadOnlyList<(string Path, Key Key)> AllKeys()
    {
        var all = new List<(string, Key)>();
        Walk(Job, "", all);
        return all;
    }

    private static void Walk(GroupKind group, string path, List<(string, Key)> all)
    {
        foreach (var key in group.Keys)
        {
            var full = path.Length == 0 ? key.Name : $"{path}.{key.Name}";
            all.Add((full, key));
            if (Inner(key.Kind) is { } inner) Walk(inner, key.Kind is MapKind ? full + ".NAME" : full, all);
        }
    }

    private static GroupKind? Inner(KeyKind kind) => kind switch
    {
        GroupKind g => g,
        MapKind { Item: GroupKind g } => g,
        ListKind { Item: GroupKind g } => g,
        _ => null,
    };
}
