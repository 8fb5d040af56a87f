using InstallPacket.Drawings;
using InstallPacket.Plans;

namespace InstallPacket.Packets.Data;

/// <summary>The lists that go into a spreadsheet.</summary>
internal static class MaterialsCsv
{
    private const double MetresPerFoot = 0.3048;

    public static byte[] CutList(Plan plan, IWords words)
    {
        var csv = CsvFile.Of(words, "piece", "kind", "run", "cable", "length_m", "length_ft", "from", "to", "strip", "cut_from");
        var strips = plan.Materials.Cutting?.Cables.SelectMany(c => c.Strips).ToArray() ?? [];
        foreach (var p in plan.Materials.Pieces)
        {
            var strip = strips.FirstOrDefault(s => s.Pieces.Any(q => q.Number == p.Number));
            csv.Row(p.Number, words.Say("values.piece." + Word.Of(p.Kind)), words.Name(p.Run), p.CableName, p.LengthM,
                p.LengthM / MetresPerFoot,
                words.Name(p.From), words.Name(p.To), strip?.Number, strip?.Stock);
        }
        return csv.Bytes();
    }

    /// <summary>What the van holds afterwards; a header alone when the job states no stock.</summary>
    public static byte[] VanList(Plan plan, IWords words)
    {
        var csv = CsvFile.Of(words, "stock", "part", "name", "kind", "part_used", "count", "length_m", "length_ft");
        foreach (var v in plan.Materials.Cutting?.VanList ?? [])
            csv.Row(v.Stock, v.Part, v.Name, words.Say("values.stock." + Word.Of(v.Kind)),
                words.Say(v.PartUsed ? "values.answer.yes" : "values.answer.no"),
                v.Count, v.LengthM, v.LengthM / MetresPerFoot);
        return csv.Bytes();
    }

    public static byte[] Materials(Plan plan, IWords words)
    {
        var csv = CsvFile.Of(words, "part", "name", "kind", "count", "length_m", "length_ft", "spare_pct", "in_pack", "packs", "bring",
            "unit_price", "price", "currency", "for");
        var prices = plan.Materials.Cost?.Lines.ToDictionary(l => l.Part, StringComparer.Ordinal);
        foreach (var i in plan.Materials.Items)
        {
            var price = prices?.GetValueOrDefault(i.Part);
            csv.Row(i.Part, i.Name, words.Say("values.part." + Word.Of(i.Kind)), i.Count, i.LengthM, i.LengthM / MetresPerFoot, i.SparePct,
                i.PackCount, i.Packs,
                i.BringCount, price?.UnitAmount, price?.LineAmount, price is null ? null : plan.Materials.Cost!.Currency,
                    words.List(i.For.Split(", ").Select(words.Name)));
        }
        return csv.Bytes();
    }
}
