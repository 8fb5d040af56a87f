using InstallPacket.Plans;

namespace InstallPacket.Drawings.Bonding;

/// <summary>A numbered thing of the bonding sketch.</summary>
internal sealed record BondEntry(int Number, string Key, string Text);

/// <summary>The words of the bonding sketch: one numbered entry for each thing in it.</summary>
internal sealed class BondWords
{
    /// <summary>The conductor from the mast, as the plan calls it.</summary>
    public const string FromMast = "the conductor from the mast";

    /// <summary>The conductor from the grounding block, as the plan calls it.</summary>
    public const string FromBlock = "the conductor from the grounding block";

    private const string Jumper = "the jumper from the rod to the building's electrode system";
    private readonly SheetPlan _plan;
    private readonly UnitPrinter _print;
    private readonly List<BondEntry> _entries = [];

    public BondWords(SheetPlan plan)
    {
        _plan = plan;
        _print = plan.Print;
        var b = plan.Bonding;
        if (HasMast)
            Add("mast",
                plan.Say(b.Rod is null ? "bonding.mast-to-connection" : "bonding.mast-to-rod", ("size", plan.Size(b.MastSize)),
                ("length", MastLength),
                ("least", Least(FromMast)), ("route", Route(FromMast))) + There(b.MastExisting));
        if (HasShield)
            Add("shield", plan.Say("bonding.shield", ("block", b.BlockElement), ("size", plan.Size(b.ShieldSize)), ("length", ShieldLength),
                ("least", Least(FromBlock)), ("route", Route(FromBlock))) + There(b.ShieldExisting));
        Add("connection", plan.Say("bonding.connection", ("connection", b.Connection)));
        Add("service", plan.Say("bonding.service-note", ("by", b.By)));
        if (b.Rod is not { } rod) return;
        Add("rod", plan.Say("bonding.rod", ("count", rod.Count), ("name", rod.Name), ("clamps", rod.Clamps)) + There(b.RodExisting));
        Add("jumper", rod.Jumper.Length > 0 ? plan.Say("bonding.jumper", ("jumper", JumperLabel), ("least", Least(Jumper)))
            : plan.Say("bonding.jumper-none"));
    }

    public IReadOnlyList<BondEntry> Entries => _entries;

    public bool HasMast => _plan.Bonding.MastNeeded || _plan.Bonding.MastLengthM > 0;

    public bool HasShield => _plan.Bonding.BlockElement.Length > 0;

    public string MastLength => _print.Length(_plan.Bonding.MastLengthM);

    public string ShieldLength => _print.Length(_plan.Bonding.ShieldLengthM);

    public string JumperLabel => _plan.Bonding.Rod is { JumperSize: { } size } rod
        ? $"{_plan.Size(size)}, {_print.Length(rod.JumperLengthM)}" : "";

    public string RodLabel => _plan.Bonding.Rod is { LengthM: { } length }
        ? _plan.Say("bonding.rod-long", ("length", _print.Length(length))) : _plan.Say("bonding.rod-unknown");

    public string Description => _plan.Say("bonding.description",
        ("entries", string.Join(" ", _entries.Select(e => _plan.Say("bonding.entry", ("number", e.Number), ("text", e.Text))))));

    public int Number(string key) => _entries.First(e => e.Key == key).Number;

    /// <summary>Distance to the nearest power conductor in words; empty when unknown.</summary>
    public string Power(string use) => Of(use)?.PowerDistanceM is { } distance
        ? _plan.Say("bonding.power", ("distance", _print.Length(distance))) : "";

    private BondRoutePlan? Of(string use) => _plan.Bonding.Routes.FirstOrDefault(r => r.Use == use);

    private string There(bool existing) => existing ? $" {_plan.Say("bonding.there")}" : "";

    private void Add(string key, string text) => _entries.Add(new(_entries.Count + 1, key, text));

    private string Least(string use) => _plan.Bonding.Sizes.FirstOrDefault(s => s.Use == use) is { } size
        ? _plan.Say("bonding.least", ("least", _plan.Size(size.Least))) : "";

    private string Route(string use)
    {
        if (Of(use) is not { } route) return "";
        var words = new List<string>();
        if (route.Bends is { } bends) words.Add(_plan.Say("bonding.bends", ("count", bends)));
        if (route.BendRadiusM is { } radius) words.Add(_plan.Say("bonding.radius", ("radius", _print.Small(radius))));
        if (route.Coils is { } coils) words.Add(_plan.Say("bonding.coils", ("count", coils)));
        words.Add(route.PowerDistanceM is { } distance ? _plan.Say("bonding.from-power", ("distance", _print.Length(distance)))
            : _plan.Say("bonding.power-unknown"));
        var text = _plan.List(words);
        return $" {char.ToUpperInvariant(text[0])}{text[1..]}.";
    }
}
