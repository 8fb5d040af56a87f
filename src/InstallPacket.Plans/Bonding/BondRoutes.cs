using InstallPacket.Calc.Quantities;

namespace InstallPacket.Plans.Bonding;

/// <summary>Judges how the conductors run.</summary>
internal sealed class BondRoutes(CodeFamily code, FindingList findings)
{
    private const double Slack = 1e-9;

    /// <summary>One conductor; what the survey does not say stays unknown.</summary>
    public BondRoutePlan Of(string what, double lengthM, BondRoute? route)
    {
        var least = route?.PowerCircuit is { } circuit ? code.BondingOf("power-" + Word.Of(circuit)) : null;
        if (route is not null) Judge(what, route, least);
        return new(what, lengthM, route?.Bends, route?.BendRadius?.Value.Metres, route?.Coils?.Value, route?.PowerDistance?.Value.Metres,
            Circuit(route?.PowerCircuit),
            least?.Metres, least?.Document ?? "", least?.Edition ?? "");
    }

    private void Judge(string what, BondRoute route, BondingLimit? least)
    {
        if (route.Coils is { Value: > 0 } coils)
            findings.Add(Severity.Caution, "bond-coiled", coils.At, ("what", what), ("turns", coils.Value));
        if (route.BendRadius is { } bend && code.BondingOf("bend-radius") is { } radius && bend.Value.Metres < radius.Metres - Slack)
            findings.Add(Severity.Caution, "bond-bent-sharply", bend.At, ("what", what), ("radius_m", bend.Value.Metres),
                ("least_m", radius.Metres), ("rule", radius.Source()));
        if (route.PowerDistance is { } distance && least is not null && distance.Value.Metres < least.Metres - Slack)
            findings.Add(Severity.Caution, "bond-near-power", distance.At, ("what", what), ("distance_m", distance.Value.Metres),
                ("circuit", Circuit(route.PowerCircuit)), ("least_m", least.Metres), ("rule", least.Source()));
    }

    private static string Circuit(PowerCircuit? circuit) => circuit switch
    {
        PowerCircuit.UpTo250V => "up to 250 V",
        PowerCircuit.Above250V => "more than 250 V",
        null => "",
    };
}
