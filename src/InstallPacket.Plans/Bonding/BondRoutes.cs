using InstallPacket.Calc.Quantities;

namespace InstallPacket.Plans.Bonding;

/// <summary>Judges how the conductors run.</summary>
internal sealed class BondRoutes(Job job, CodeFamily code, FindingList findings)
{
    private const double Slack = 1e-9;
    private readonly UnitPrinter _print = UnitPrinter.Of(job);

    /// <summary>One conductor; what the survey does not say stays unknown.</summary>
    public BondRoutePlan Of(string what, double lengthM, BondRoute? route)
    {
        var least = route?.PowerCircuit is { } circuit ? code.BondingOf("power-" + Word.Of(circuit)) : null;
        if (route is not null) Judge(what, route, least);
        return new(what, lengthM, route?.Bends, route?.BendRadius?.Value.Metres, route?.Coils?.Value, route?.PowerDistance?.Value.Metres, Circuit(route?.PowerCircuit),
            least?.Metres, least?.Document ?? "", least?.Edition ?? "");
    }

    private void Judge(string what, BondRoute route, BondingLimit? least)
    {
        if (route.Coils is { Value: > 0 } coils)
            findings.Add(Severity.Caution, "bond-coiled", coils.At, $"{what} has {UnitText.Number(coils.Value, 0)} {(coils.Value == 1 ? "turn" : "turns")} of coiled slack",
                "none: a few turns can have more inductance than the whole run (by the equations of the workings)", "cut the conductor to length");
        if (route.BendRadius is { } bend && code.BondingOf("bend-radius") is { } radius && bend.Value.Metres < radius.Metres - Slack)
            findings.Add(Severity.Caution, "bond-bent-sharply", bend.At, $"{what} is bent to a radius of {_print.Small(bend.Value.Metres)}",
                $"at least {_print.Small(radius.Metres)} ({radius.Source})", "lay it in a wide curve");
        if (route.PowerDistance is { } distance && least is not null && distance.Value.Metres < least.Metres - Slack)
            findings.Add(Severity.Caution, "bond-near-power", distance.At, $"{what} comes within {_print.Length(distance.Value.Metres)} of a conductor of {Circuit(route.PowerCircuit)}",
                $"at least {_print.AtLeast(least.Metres)} ({least.Source})", "move the conductor, or ask a licensed electrician what separates them here");
    }

    private static string Circuit(PowerCircuit? circuit) => circuit switch
    {
        PowerCircuit.UpTo250V => "up to 250 V",
        PowerCircuit.Above250V => "more than 250 V",
        null => "",
    };
}
