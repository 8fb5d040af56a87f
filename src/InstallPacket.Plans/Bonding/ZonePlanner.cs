using InstallPacket.Calc.Bonding;

namespace InstallPacket.Plans.Bonding;

/// <summary>Whether antenna and mast stand in the zone of the wall that the code family exempts.</summary>
internal sealed class ZonePlanner(Job job, CodeFamily code, Workings work, FindingList findings)
{
    private const double Slack = 1e-6;

    public ZonePlan? Plan()
    {
        if (!code.ExemptsWallZone || job.Bonding.Zone is not { } zone) return null;
        var (below, outM) = (zone.BelowEdge.Metres, zone.Out.Metres);
        var exempt = work.Apply(FacadeZone.ExemptFormula, "antenna and mast", Term.Key("bonding.zone.below-edge", below),
            Term.Key("bonding.zone.out", outM)) > 0;
        var contradicted = exempt && Contradicted(zone);
        return new(below, outM, FacadeZone.BelowEdgeM, FacadeZone.OutM, contradicted, exempt && !contradicted);
    }

    // No roof edge lies above the ridge: the antenna cannot be farther below it than the ridge is above the antenna.
    private bool Contradicted(WallZone zone)
    {
        if (job.Routing.House is not { } house) return false;
        var most = house.Ridge.Metres - job.Siting.AntennaHeight.Value.Metres;
        if (zone.BelowEdge.Metres <= most + Slack) return false;
        findings.Add(Severity.Caution, "zone-contradicted", zone.At, ("below_m", zone.BelowEdge.Metres),
            ("antenna_m", job.Siting.AntennaHeight.Value.Metres),
            ("ridge_m", house.Ridge.Metres), ("most_m", most));
        return true;
    }
}
