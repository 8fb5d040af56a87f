namespace InstallPacket.Packets.Forms;

/// <summary>What is asked of antenna and mount; what belongs to one kind of mount is asked only of that kind.</summary>
internal static class FormMount
{
    /// <summary>Holds for mounts whose place is not on an outer wall.</summary>
    public const string OffTheWall = "mount-kind=ground-mast|chimney-lashing|tripod|ballast|attic";

    private const string OnTheWall = "mount-kind!=ground-mast|chimney-lashing|tripod|ballast|attic";
    private const string Own = "mount-kit=";
    private const string Chimney = "mount-kind=chimney-lashing";
    private const string Ballast = "mount-kind=ballast";
    private const string OnTheRoof = "mount-kind=chimney-lashing|tripod|ballast";
    private const string MayHaveGuys = "mount-kind=ground-mast|tripod";

    /// <summary>The questions, in order.</summary>
    public static IReadOnlyList<FormQuestion> Questions { get; } = [.. Antenna, .. Place, .. Mast, Fixings, .. Kinds, .. Wind];

    private static IReadOnlyList<FormQuestion> Antenna =>
    [
        new("antenna", "cabling.chain.NAME.part") { Shape = FormShape.KitOrPart, Needed = true, Plain = false, Parts = [PartKind.Antenna] },
        new("amplifier", "cabling.chain.NAME.part") { When = "antenna=part:*", Plain = false, Parts = [PartKind.Amplifier] },
        new("amplifier-lead", "routing.runs.NAME.length") { When = "antenna=part:*;amplifier", Needed = true, Plain = false },
    ];

    private static IReadOnlyList<FormQuestion> Place =>
    [
        new("mount-kit", "kits") { Shape = FormShape.MountKit, Plain = false },
        new("mount-kind", "mounting.kind") { Needed = true, When = Own },
        new("mount-at", "routing.places") { Shape = FormShape.WallPlace, Needed = true, Plain = false, When = OnTheWall },
        new("mount-where", "routing.places.NAME.room") { Needed = true, Plain = false, When = OffTheWall },
        new("antenna-height", "siting.antenna-height") { NeededWhen = OffTheWall },
        new("under-roof", "siting.under-roof") { Needed = true, When = "mount-kind=attic" },
        new("roof-pitch", "mounting.roof-pitch") { MayBeUnknown = true, When = OnTheRoof },
    ];

    private static IReadOnlyList<FormQuestion> Mast =>
    [
        new("mount-part", "mounting.part") { Needed = true, When = Own },
        new("mast", "mounting.mast") { Needed = true, When = Own },
        new("mast-length", "mounting.mast-length") { Needed = true, When = Own },
        new("free-length", "mounting.free-length") { Needed = true, When = Own },
        new("spacing", "mounting.spacing") { When = Own + ";mount-kind!=chimney-lashing" },
        new("mount-on", "mounting.on") { Needed = true, When = Own },
    ];

    private static FormQuestion Fixings => new("fixings", "mounting.fixings")
    {
        Shape = FormShape.List, Needed = true, When = Own,
        Each =
        [
            new("part", "mounting.fixings.part") { Needed = true },
            new("count", "mounting.fixings.count") { Needed = true },
            new("into", "mounting.fixings.into") { Needed = true },
            new("pilot", "mounting.fixings.pilot"),
            new("timber", "mounting.fixings.timber") { MayBeUnknown = true },
            new("end-distance", "mounting.fixings.end-distance") { When = "timber" },
            new("edge-distance", "mounting.fixings.edge-distance") { When = "timber" },
            new("gap", "mounting.fixings.gap"),
            new("sheet", "") { Shape = FormShape.Gate },
            new("pull", "mounting.fixings.pull") { When = "sheet=yes" },
            new("shear", "mounting.fixings.shear") { When = "sheet=yes" },
            new("stated", "mounting.fixings.stated") { When = "sheet=yes" },
        ],
    };

    private static IReadOnlyList<FormQuestion> Kinds =>
    [
        new("chimney-side", "mounting.chimney.side") { Needed = true, When = Chimney },
        new("chimney-height", "mounting.chimney.height") { Needed = true, When = Chimney },
        new("chimney-straps", "mounting.chimney.strap-spacing") { Needed = true, When = Chimney },
        new("chimney-state", "mounting.chimney.state") { Needed = true, When = Chimney },
        new("chimney-allowed", "mounting.chimney.allowed") { Needed = true, When = Chimney },
        new("ballast-side", "mounting.ballast.side") { Needed = true, When = Ballast },
        new("ballast-block", "mounting.ballast.block") { Needed = true, When = Ballast },
        new("ballast-blocks", "mounting.ballast.blocks") { When = Ballast },
        new("ballast-bears", "mounting.ballast.roof-bears") { MayBeUnknown = true, When = Ballast },
        new("ballast-stated", "mounting.ballast.stated") { When = Ballast + ";ballast-bears" },
        new("guys", "mounting.guys.sets")
        {
            Shape = FormShape.List, When = MayHaveGuys,
            Each =
            [
                new("ring", "mounting.guys.sets.ring") { Needed = true },
                new("count", "mounting.guys.sets.count") { Needed = true },
                new("radius", "mounting.guys.sets.anchor-radius") { Needed = true },
            ],
        },
        .. Guyed,
    ];

    private static IReadOnlyList<FormQuestion> Guyed =>
    [
        new("guys-part", "mounting.guys.part") { Needed = true, When = "guys" },
        new("guys-pretension", "mounting.guys.pretension") { Needed = true, When = "guys" },
        new("guys-anchor", "mounting.guys.anchor") { Needed = true, When = "guys" },
        new("guys-pull", "mounting.guys.anchor-pull") { MayBeUnknown = true, When = "guys" },
        new("guys-stated", "mounting.guys.stated") { When = "guys-pull" },
    ];

    private static IReadOnlyList<FormQuestion> Wind =>
    [
        new("wind-speed", "mounting.wind.speed") { MayBeUnknown = true },
        new("wind-exposure", "mounting.wind.exposure") { MayBeUnknown = true },
        new("wind-crest", "mounting.wind.crest"),
        new("more-kits", "kits") { Shape = FormShape.MoreKits, Plain = false },
    ];
}
