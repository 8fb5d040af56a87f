using InstallPacket.Calc.Materials;

namespace InstallPacket.Plans.Materials;

/// <summary>Adds spares and rounds up to whole packs, by what the job or its firm says, else the part.</summary>
internal sealed class PackPlanner(MaterialsSection materials, PartLibrary parts, Workings work)
{
    public ItemPlan Of(ItemPlan item)
    {
        if (item.Count is not { } wanted) return item;
        var part = parts.Find(item.Part);
        Term Item(string key, double number) => Term.Plan($"materials.items[{item.Part}].{key}", number);
        Term bring = Item("count", wanted);
        var spare = Spare(item.Part, part);
        if (spare is not null) bring = work.Apply(PackCount.SpareFormula, item.Part, bring, spare);
        item = item with { SparePct = spare?.Number };
        if (part?.Pack is not { } pack) return item with { BringCount = (int)bring.Number };
        var packs = (int)work.Apply(PackCount.PacksFormula, item.Part, bring, Term.Part(item.Part, PartKeys.Pack.Name, pack)).Number;
        return item with { PackCount = pack, Packs = packs, BringCount = packs * pack };
    }

    private Given? Spare(string id, Part? part) =>
        materials.Spares.FirstOrDefault(s => s.Name == id) is { } own ? Term.Key($"materials.spares.{id}", own.Value)
        : part?.SparePct is { } spare ? Term.Part(id, PartKeys.Spare.Name, spare) : null;
}
