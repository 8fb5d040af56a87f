using InstallPacket.Calc.Quantities;
using InstallPacket.Plans;

namespace InstallPacket.Drawings.Bonding;

/// <summary>A numbered thing of the bonding sketch.</summary>
internal sealed record BondEntry(int Number, string Key, string Text);

/// <summary>The words of the bonding sketch: one numbered entry for each thing in it.</summary>
internal sealed class BondWords
{
    private readonly SheetPlan _plan;
    private readonly UnitPrinter _print;
    private readonly List<BondEntry> _entries = [];

    public BondWords(SheetPlan plan)
    {
        _plan = plan;
        _print = plan.Print;
        var b = plan.Bonding;
        if (HasMast) Add("mast", $"Mast to {(b.Rod is null ? "connection" : "rod")}: {b.MastSize}, {MastLength}{Least("the conductor from the mast")}.{Route("the conductor from the mast")}");
        if (HasShield) Add("shield", $"Grounding block {b.BlockElement} to connection: {b.ShieldSize}, {ShieldLength}{Least("the conductor from the grounding block")}.{Route("the conductor from the grounding block")}");
        Add("connection", $"Connection: {b.Connection}.");
        Add("service", $"Service equipment, meter and supply earth: licensed work only. Who may do the bonding: {b.By}.");
        if (b.Rod is not { } rod) return;
        Add("rod", $"{(rod.Count > 1 ? $"{UnitText.Number(rod.Count, 0)} rods of the mast" : "Rod of the mast")}: {rod.Name}{(rod.Clamps > 0 ? $"; {UnitText.Number(rod.Clamps, 0)} clamps" : "")}.");
        Add("jumper", rod.Jumper.Length > 0
            ? $"Jumper to the electrode system of the building: {JumperLabel}{Least("the jumper from the rod to the building's electrode system")}." : "Jumper to the electrode system of the building: none is planned; see the findings.");
    }

    public IReadOnlyList<BondEntry> Entries => _entries;

    public bool HasMast => _plan.Bonding.MastNeeded || _plan.Bonding.MastLengthM > 0;

    public bool HasShield => _plan.Bonding.BlockElement.Length > 0;

    public string MastLength => _print.Length(_plan.Bonding.MastLengthM);

    public string ShieldLength => _print.Length(_plan.Bonding.ShieldLengthM);

    public string JumperLabel => _plan.Bonding.Rod is { Jumper.Length: > 0 } rod ? $"{rod.JumperSize}, {_print.Length(rod.JumperLengthM)}" : "";

    public string RodLabel => _plan.Bonding.Rod is { LengthM: { } length } ? $"rod, {_print.Length(length)} long" : "rod, length unknown";

    public string Description => "The bonding from the mast to the earth of the building, not to scale. " + string.Join(" ", _entries.Select(e => $"{UnitText.Number(e.Number, 0)}: {e.Text}"));

    public int Number(string key) => _entries.First(e => e.Key == key).Number;

    /// <summary>Distance to the nearest power conductor in words; empty when unknown.</summary>
    public string Power(string use) => Of(use)?.PowerDistanceM is { } distance ? $"{_print.Length(distance)} away" : "";

    private BondRoutePlan? Of(string use) => _plan.Bonding.Routes.FirstOrDefault(r => r.Use == use);

    private void Add(string key, string text) => _entries.Add(new(_entries.Count + 1, key, text));

    private string Least(string use) => _plan.Bonding.Sizes.FirstOrDefault(s => s.Use == use) is { } size ? $" (at least {size.Least})" : "";

    private string Route(string use)
    {
        if (Of(use) is not { } route) return "";
        var words = new List<string>();
        if (route.Bends is { } bends) words.Add(bends == 1 ? "1 bend" : $"{UnitText.Number(bends, 0)} bends");
        if (route.BendRadiusM is { } radius) words.Add($"none tighter than {_print.Small(radius)}");
        if (route.Coils is { } coils) words.Add(coils == 0 ? "no coil" : $"{UnitText.Number(coils, 0)} turns coiled: cut to length");
        if (route.PowerDistanceM is { } distance) words.Add($"{_print.Length(distance)} from the nearest power conductor");
        else words.Add("distance to power conductors unknown");
        var text = string.Join(", ", words);
        return $" {char.ToUpperInvariant(text[0])}{text[1..]}.";
    }
}
