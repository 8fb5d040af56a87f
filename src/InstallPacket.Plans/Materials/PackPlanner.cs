using InstallPacket.Calc.Materials;

namespace InstallPacket.Plans.Materials;

/// <summary>Adds spares and rounds up to whole packs, by what the part says.</summary>
internal sealed class PackPlanner(PartLibrary parts, WorkLog log)
{
    public ItemPlan Of(ItemPlan item)
    {
        if (item.Count is not { } wanted) return item;
        var part = parts.Find(item.Part);
        var bring = wanted;
        if (part?.SparePct is { } spare) bring = (int)log.Record(PackCount.SpareFormula, item.Part, PackCount.WithSpares(wanted, spare), wanted, spare);
        if (part?.Pack is not { } pack) return item with { SparePct = part?.SparePct, BringCount = bring };
        var packs = (int)log.Record(PackCount.PacksFormula, item.Part, PackCount.Packs(bring, pack), bring, pack);
        return item with { SparePct = part.SparePct, PackCount = pack, Packs = packs, BringCount = packs * pack };
    }
}
