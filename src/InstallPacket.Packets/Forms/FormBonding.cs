namespace InstallPacket.Packets.Forms;

/// <summary>What is asked of bonding: where it joins, which way the conductors go, a rod of its own, what is known of lightning.</summary>
internal static class FormBonding
{
    private const string Rod = "own-rod=yes";
    private const string Zone = "in-zone=yes";
    private const string Lightning = "lightning=yes";

    /// <summary>The questions, in order.</summary>
    public static IReadOnlyList<FormQuestion> Questions { get; } =
    [
        new("bond-to", "bonding.connection") { Needed = true },
        new("bond-conductor", "bonding.conductor") { Needed = true },
        new("bond-mast", "bonding.mast-length") { Needed = true },
        .. Route("mast"),
        new("bond-shield", "bonding.shield-length") { Needed = true },
        new("shield-conductor", "bonding.shield-conductor"),
        .. Route("shield"),
        .. OwnRod,
        new("in-zone", "") { Shape = FormShape.Gate },
        new("zone-below", "bonding.zone.below-edge") { Needed = true, When = Zone },
        new("zone-out", "bonding.zone.out") { Needed = true, When = Zone },
        new("lightning", "") { Shape = FormShape.Gate },
        new("flash-density", "bonding.lightning.flash-density") { When = Lightning },
        new("thunder-days", "bonding.lightning.thunder-days") { When = Lightning },
        new("lightning-place", "bonding.lightning.place") { Needed = true, When = Lightning },
        new("bond-by", "bonding.by") { Needed = true },
        new("bond-note", "bonding.note"),
    ];

    private static IReadOnlyList<FormQuestion> OwnRod =>
    [
        new("own-rod", "") { Shape = FormShape.Gate },
        new("rod-part", "bonding.rod.part") { Needed = true, When = Rod, Rods = true },
        new("rod-count", "bonding.rod.count") { When = Rod },
        new("rod-spacing", "bonding.rod.spacing") { Needed = true, When = Rod + ";rod-count=2" },
        new("rod-soil", "bonding.rod.soil") { MayBeUnknown = true, When = Rod },
        new("rod-resistivity", "bonding.rod.resistivity") { MayBeUnknown = true, When = Rod },
        new("rod-jumper", "bonding.rod.jumper.part") { MayBeUnknown = true, When = Rod },
        new("rod-jumper-length", "bonding.rod.jumper.length") { Needed = true, When = Rod + ";rod-jumper" },
        new("rod-clamp", "bonding.rod.clamp") { When = Rod },
    ];

    // How a conductor runs, where somebody looked.
    private static IReadOnlyList<FormQuestion> Route(string of)
    {
        var (gate, path) = ($"{of}-route", $"bonding.{of}-route");
        return
        [
            new(gate, "") { Shape = FormShape.Gate },
            new($"{of}-bends", path + ".bends") { When = gate + "=yes" },
            new($"{of}-bend-radius", path + ".bend-radius") { When = gate + "=yes" },
            new($"{of}-coils", path + ".coils") { When = gate + "=yes" },
            new($"{of}-power", path + ".power.distance") { MayBeUnknown = true, When = gate + "=yes" },
            new($"{of}-circuit", path + ".power.circuit") { Needed = true, When = $"{gate}=yes;{of}-power" },
        ];
    }
}
