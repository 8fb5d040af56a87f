namespace InstallPacket.Jobs;

/// <summary>The keys of a column of a table of addresses.</summary>
internal static class ImportColumnKeys
{
    private static readonly KeyList Keys = new();

    public static readonly Key<string> Column = Keys.Required("column", new TextKind(80), "The column as the table's first row calls it.");

    public static readonly Key<string> Key = Keys.Required("key", new TextKind(80), "The key, for example `customer.name`; `folder` for the name of the job's folder.");

    public static GroupKind Group => Keys.Group;
}

/// <summary>The keys of a job file.</summary>
internal static class JobKeys
{
    private static readonly KeyList Keys = new();

    public static readonly Key<int> Format = Keys.Required(
        "format", new IntegerKind(KeyCatalogue.Format, KeyCatalogue.Format), "The job format that the file is written in.");

    public static readonly Key<string> Title = Keys.Required("title", new TextKind(120), "What the job is, in one line.");

    public static readonly Key<DateOnly> Date = Keys.Required(
        "date", new DateKind(), "The planned day of work; the magnetic declination is computed for it.");

    public static readonly Key<string> Firm = Keys.Optional(
        "firm", new TextKind(60), "The firm, where several share a folder of jobs: a file of `_shared/firms`; otherwise `_shared/firm.yaml`, if it is there.");

    public static readonly Key<IReadOnlyList<Sourced<CheckedGroup>>> Import = Keys.Optional(
        "import", new ListKind<CheckedGroup>(ImportColumnKeys.Group, 0, 100),
        "Firm's file: which column of a table of addresses is which key, for `installpacket import`.");

    public static readonly Key<string> Code = Keys.Required(
        "code", new SuggestedWordKind([.. CodeDefaults.BuiltIn.Select(c => c.Id)]), "The code family whose rules the packet quotes.");

    public static readonly Key<UnitFamily> Units = Keys.Optional(
        "units", new WordKind<UnitFamily>(),
            "The units that the packet prints; those of the code family when absent: `us` for `us`, `metric` for `eu`.");

    public static readonly Key<PaperSize> Paper = Keys.Optional(
        "paper", new WordKind<PaperSize>(), "The paper of the PDF; `letter` for code `us`, `a4` otherwise, when absent.");

    public static readonly Key<LevelUnit> LevelUnit = Keys.Default(
        "level-unit", new WordKind<LevelUnit>(), "The unit in which levels are printed.", "dBuV");

    public static readonly Key<string> Language = Keys.Optional("language", new TextKind(35),
        "The language of the packet, by the name of its file in the theme's `words` folder; that of the code family when absent: `en-US` for `us`, `en-GB` for `eu`.");

    public static readonly Key<CheckedGroup> PreparedBy = Keys.Required(
        "prepared-by", PartyKeys.Group, "The firm that plans and installs.");

    public static readonly Key<CheckedGroup> Customer = Keys.Required("customer", PartyKeys.Group, "For whom.");

    public static readonly Key<IReadOnlyList<Entry<YamlMap>>> Kits = Keys.Optional(
        "kits", new MapKind<YamlMap>(new TreeKind(), "kit", 0, 40),
        "Pieces of work that are always done alike: under a name of yours `kit`, a file of `_shared/kits`, and the values that it takes.");

    public static readonly Key<CheckedGroup> Siting = Keys.Required(
        "siting", SitingKeys.Group, "Where the antenna stands and what stands in its way.");

    public static readonly Key<CheckedGroup> Reception = Keys.Required("reception", ReceptionKeys.Group, "Which transmitters are wanted.");

    public static readonly Key<CheckedGroup> Cabling = Keys.Required(
        "cabling", CablingKeys.Group, "The chain of parts from the antenna to the outlets.");

    public static readonly Key<CheckedGroup> Routing = Keys.Required("routing", RoutingKeys.Group, "Where the cable runs in the house.");

    public static readonly Key<CheckedGroup> Mounting = Keys.Required("mounting", MountingKeys.Group, "What holds the antenna.");

    public static readonly Key<CheckedGroup> Bonding = Keys.Required("bonding", BondingKeys.Group, "How mast and cable are bonded.");

    public static readonly Key<CheckedGroup> Materials = Keys.Optional("materials", MaterialsKeys.Group, "What else to bring.");

    public static readonly Key<CheckedGroup> Handover = Keys.Optional("handover", HandoverKeys.Group, "What the customer is told.");

    public static GroupKind Group => Keys.Group;
}
