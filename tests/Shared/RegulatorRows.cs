namespace InstallPacket.Tests;

/// <summary>Writes rows in the form of the regulator's query list, with invented stations.</summary>
internal static class RegulatorRows
{
    /// <summary>A sound row, and one for every fault that drops a row.</summary>
    public static readonly string[] Faulty =
    [
        Row(), "<html> a heading\n", Row(call: "X INV"), Row(service: "TX"), Row(service: "FM"), Row(channel: "70"), Row(channel: "7.5"), Row(power: "0.     kW"), Row(power: "-3. kW"), Row(power: "high"),
        Row(power: "9000. kW"), Row(power: "40. W"), Row(north: "X"), Row(latitude: "43|60|0"), Row(latitude: "91|0|0"), Row(latitude: "90|0|1"), Row(longitude: "99|22|60"), Row(longitude: "||"),
        Row(latitude: "0|0|0", longitude: "0|0|0"), Row(haat: "-", aboveSea: "0."), "|XINV-DT|too|short|\n",
    ];

    /// <summary>One row; every field is padded as the list pads them.</summary>
    public static string Row(
        string call = "XINV-DT", string service = "DTV", string channel = "21", string status = "LIC", string city = "HARLOW", string power = "34.     kW", string vertical = "-", string haat = "318.",
        string north = "N", string latitude = "43|17|39.5", string east = "W", string longitude = "99|22|40.8", string aboveSea = "850.", string directional = "ND")
    {
        string[] fields =
        [
            call.PadRight(12), "-".PadRight(10), service.PadRight(4), channel.PadRight(4), directional.PadRight(19), "-".PadRight(20), "-".PadRight(3), "-".PadRight(3), status.PadRight(6), city.PadRight(25),
            "ZZ", "US", "BLANK0000000000".PadRight(20), power.PadRight(10), vertical.PadRight(10), haat.PadRight(8), "-".PadRight(8), "000000".PadRight(10), north, Padded(latitude), east, Padded(longitude),
            "INVENTED BROADCASTING OF NOWHERE".PadRight(76), "0.00 km".PadRight(11), "0.00 mi".PadRight(11), "0.00 deg".PadRight(11), aboveSea.PadRight(8), "-".PadRight(8), "-".PadRight(9), "0.".PadRight(6), "-".PadRight(7), "0".PadRight(10),
        ];
        return "|" + string.Join('|', fields) + "|\n";
    }

    private static string Padded(string angle) => string.Join('|', angle.Split('|').Select(p => p.PadRight(5)));
}
