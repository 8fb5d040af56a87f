using System.Globalization;
using System.Text.Json.Nodes;
using InstallPacket.Calc.Quantities;

namespace InstallPacket.Packets.Forms;

/// <summary>Which units a field offers, the usual one first; a bare number takes the first.</summary>
internal static class FormUnits
{
    // Below this a thing is measured with the short end of the tape [m].
    private const double Small = 3;

    /// <summary>The units of a quantity.</summary>
    /// <param name="kind">The quantity.</param>
    /// <param name="us">Whether in feet and inches.</param>
    public static IReadOnlyList<string> Of(QuantityKind kind, bool us) => kind.Dimension switch
    {
        Dimension.Length when Stored(kind, kind.Max) <= Small => us ? ["in"] : ["mm", "cm"],
        Dimension.Length => us ? ["ft", "in"] : ["m", "cm"],
        Dimension.Speed => us ? ["mph"] : ["m/s"],
        Dimension.Mass => us ? ["lb"] : ["kg"],
        _ => [.. UnitTable.For(kind.Dimension).Select(u => u.Name).Take(2)],
    };

    /// <summary>A bound of the range in the stored unit.</summary>
    public static double Stored(QuantityKind kind, double bound) =>
        UnitTable.For(kind.Dimension).First(u => u.Name == kind.RangeUnit) is var unit ? bound * unit.Factor + unit.Offset : bound;

    /// <summary>A number for the script.</summary>
    public static string Number(double value) => value.ToString("0.######", CultureInfo.InvariantCulture);

    /// <summary>Name, factor and offset of each unit, by dimension, for the script.</summary>
    public static JsonObject Table()
    {
        var table = new JsonObject();
        foreach (var dimension in Enum.GetValues<Dimension>())
            table[Word.Of(dimension)] = new JsonArray([.. UnitTable.For(dimension).Select(u =>
                (JsonNode)new JsonArray(u.Name, u.Factor, u.Offset))]);
        return table;
    }
}
