using InstallPacket.Plans;

namespace InstallPacket.Packets;

/// <summary>The lists that go into a spreadsheet.</summary>
internal static class MaterialsCsv
{
    public static byte[] CutList(Plan plan)
    {
        var csv = new CsvFile("piece", "run", "cable", "length_m", "length_ft", "from", "to");
        foreach (var p in plan.Materials.Pieces) csv.Row(p.Number, p.Run, p.CableName, p.LengthM, p.LengthM / 0.3048, p.From, p.To);
        return csv.Bytes();
    }

    public static byte[] Materials(Plan plan)
    {
        var csv = new CsvFile("part", "name", "kind", "count", "length_m", "length_ft", "for");
        foreach (var i in plan.Materials.Items) csv.Row(i.Part, i.Name, i.Kind, i.Count, i.LengthM, i.LengthM / 0.3048, i.For);
        return csv.Bytes();
    }
}
