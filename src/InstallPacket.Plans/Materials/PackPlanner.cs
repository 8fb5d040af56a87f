using InstallPacket.Calc.Materials;

namespace InstallPacket.Plans.Materials;

/// <summary>Adds spares and rounds up to whole packs, by what the part says.</summary>
internal sealed class PackPlanner(PartLibrary parts, Workings work)
{
    public ItemPlan Of(ItemPlan item)
    {
        if (item.Count is not { } wanted) return item;
        var part = parts.Find(item.Part);
        Term Item(string key, double number) => Term.Plan($"materials.items[{item.Part}].{key}", number);
        Term bring = Item("count", wanted);
        if (part?.SparePct is { } spare) bring = work.Apply(PackCount.SpareFormula, item.Part, bring,
            Term.Part(item.Part, PartKeys.Spare.Name, spare));
        if (part?.Pack is not { } pack) return item with { SparePct = part?.SparePct, BringCount = (int)bring.Number };
        var packs = (int)work.Apply(PackCount.PacksFormula, item.Part, bring, Term.Part(item.Part, PartKeys.Pack.Name, pack)).Number;
        return item with { SparePct = part.SparePct, PackCount = pack, Packs = packs, BringCount = packs * pack };
    }
}
