namespace InstallPacket.Packets.Forms;

/// <summary>The walk around the house: which keys are asked, in which order.</summary>
internal static class FormSections
{
    private const string AnyPanel = "inserter|splitter";

    /// <summary>The sections, in order.</summary>
    public static IReadOnlyList<FormSection> All { get; } =
    [
        new("who",
        [
            new("title", "title") { Needed = true },
            new("date", "date") { Needed = true },
            new("code", "code") { Needed = true },
            new("prepared-by", "prepared-by.name") { Needed = true },
            new("customer-name", "customer.name") { Needed = true },
            new("customer-address", "customer.address"),
            new("customer-phone", "customer.phone") { MayBeUnknown = true },
            new("customer-note", "customer.note"),
            new("place", "siting.place") { Shape = FormShape.Coordinates, Needed = true },
            new("ground", "siting.ground") { MayBeUnknown = true },
            new("surroundings", "siting.surroundings") { Needed = true },
        ]),
        new("stations", [new("want", "reception.want") { Shape = FormShape.Stations, Needed = true, Plain = false }]),
        new("house",
        [
            new("house-form", "") { Shape = FormShape.HouseForm, Needed = true },
            new("width", "routing.house.width") { Needed = true, When = "house-form=box" },
            new("depth", "routing.house.depth") { Needed = true, When = "house-form=box" },
            new("walls", "routing.house.footprint")
            {
                Shape = FormShape.List, Needed = true, Plain = false, When = "house-form=other",
                Each =
                [
                    new("length", "routing.house.width") { Needed = true, Plain = false },
                    new("corner", "") { Shape = FormShape.Corner, Needed = true, Plain = false },
                ],
            },
            new("front", "routing.house.front") { Needed = true },
            new("eaves", "routing.house.eaves") { Needed = true },
            new("ridge", "routing.house.ridge") { Needed = true },
            new("roof-form", "routing.house.roof") { MayBeUnknown = true },
            new("ridge-along", "routing.house.ridge-along") { When = "roof-form=gable" },
            new("wall", "routing.house.wall") { MayBeUnknown = true },
            new("storeys", "routing.house.storeys")
            {
                Shape = FormShape.List,
                Each =
                [
                    new("name", "") { Shape = FormShape.Text, Needed = true, Plain = false },
                    new("floor", "routing.house.storeys.NAME.floor") { Needed = true },
                ],
            },
        ]),
        new("way",
        [
            new("obstructions", "siting.obstructions")
            {
                Shape = FormShape.ListOrNone, Needed = true,
                Each =
                [
                    new("name", "") { Shape = FormShape.Text, Needed = true, Plain = false },
                    new("kind", "siting.obstructions.NAME.kind") { Needed = true },
                    new("bearing", "siting.obstructions.NAME.bearing") { Needed = true },
                    new("width", "siting.obstructions.NAME.width") { Needed = true },
                    new("distance", "siting.obstructions.NAME.distance") { Needed = true },
                    new("height", "siting.obstructions.NAME.height") { Needed = true },
                    new("depth", "siting.obstructions.NAME.depth") { MayBeUnknown = true, When = "kind=trees" },
                    new("leaf", "siting.obstructions.NAME.leaf") { When = "kind=trees" },
                ],
            },
        ]),
        new("wires",
        [
            new("wires", "siting.power-lines")
            {
                Shape = FormShape.ListOrNone, Needed = true,
                Each =
                [
                    new("what", "siting.power-lines.NAME.what") { Needed = true },
                    new("distance", "siting.power-lines.NAME.distance") { Needed = true },
                    new("height", "siting.power-lines.NAME.height") { Needed = true },
                    new("voltage", "siting.power-lines.NAME.voltage") { MayBeUnknown = true },
                ],
            },
        ]),
        new("landmark",
        [
            new("landmark-what", "siting.landmark.what") { MayBeUnknown = true },
            new("landmark-bearing", "siting.landmark.bearing") { MayBeUnknown = true, When = "landmark-what" },
        ]),
        new("mount", FormMount.Questions),
        new("entry", [.. Entry, .. Run("down"), DripLoop]),
        new("inside", Inside),
        new("bonding", FormBonding.Questions),
        new("hazards",
        [
            new("access", "mounting.access") { Needed = true },
            new("work-height", "mounting.work-height") { NeededWhen = FormMount.OffTheWall },
            new("fall-protection", "mounting.fall-protection"),
            new("ladder-load", "mounting.ladder-load"),
            new("roof", "mounting.survey.roof") { Needed = true },
            new("asbestos", "mounting.survey.asbestos") { Needed = true },
            new("behind", "mounting.survey.behind") { Needed = true },
            new("buried", "mounting.survey.buried") { Needed = true },
            new("old-mast", "mounting.survey.old-mast"),
        ]),
        new("photos",
        [
            new("photos", "")
            {
                Shape = FormShape.List, Plain = false,
                Each =
                [
                    new("shows", "") { Shape = FormShape.Text, Needed = true, Plain = false },
                    new("file", "") { Shape = FormShape.Text, Needed = true, Plain = false },
                ],
            },
        ]),
    ];

    private static IReadOnlyList<FormQuestion> Entry =>
    [
        new("entry-through", "routing.entries.NAME.through") { Needed = true, Plain = false },
        new("entry-at", "routing.places") { Shape = FormShape.WallPlace, Needed = true, Plain = false, When = "entry-through!=roof" },
        new("entry-where", "routing.places.NAME.room") { Needed = true, Plain = false, When = "entry-through=roof" },
        new("block", "cabling.chain.NAME.part")
            { Needed = true, Plain = false, Parts = [PartKind.GroundingBlock, PartKind.SurgeProtector] },
        new("entry-existing", "routing.entries.NAME.existing") { Needed = true, Plain = false },
    ];

    private static FormQuestion DripLoop => new("drip-loop", "routing.runs.NAME.drip-loops")
        { Shape = FormShape.YesNo, Needed = true, When = "down-existing=no", Plain = false };

    private static IReadOnlyList<FormQuestion> Inside =>
    [
        new("inserter", "cabling.chain.NAME.part") { Plain = false, Parts = [PartKind.PowerInserter] },
        new("splitter", "cabling.chain.NAME.part") { Plain = false, Parts = [PartKind.Splitter] },
        new("panel-room", "routing.places.NAME.room") { Needed = true, When = AnyPanel, Plain = false },
        .. Run("panel", AnyPanel),
        new("outlets", "cabling.chain")
        {
            Shape = FormShape.List, Needed = true, Plain = false,
            Each = [new("room", "cabling.chain.NAME.outlet") { Needed = true, Plain = false },
                new("on-wall", "") { Shape = FormShape.Gate },
                new("at", "routing.places") { Shape = FormShape.WallPlace, Needed = true, Plain = false, When = "on-wall=yes" },
                new("existing", "cabling.chain.NAME.existing") { Needed = true, Plain = false }, .. Run("run")],
        },
        new("outlet-part", "cabling.outlet") { Needed = true },
        new("usual-cable", "cabling.cable") { Needed = true },
        new("receiver", "cabling.receiver") { Needed = true },
        new("receiver-cable", "cabling.fly-cable") { Needed = true },
        new("internet", "handover.existing-internet") { Needed = true },
        new("words", "handover.words"),
    ];

    // The questions of one piece of cable. The usual cable of the firm is not the one that is in the house already.
    private static IReadOnlyList<FormQuestion> Run(string id, string when = "") =>
    [
        new(id + "-existing", "routing.runs.NAME.existing") { Needed = true, When = when, Plain = false },
        new(id + "-length", "routing.runs.NAME.length") { Needed = true, When = when, Plain = false },
        new(id + "-cable", "routing.runs.NAME.cable") { NeededWhen = id + "-existing=yes", When = when, Plain = false },
        new(id + "-way", "routing.runs.NAME.way") { Needed = true, When = id + "-existing=no;" + when, Plain = false },
        new(id + "-connectors", "routing.runs.NAME.new-connectors") { When = id + "-existing=yes;" + when, Plain = false },
    ];
}
