using InstallPacket.Calc.Sources;

namespace InstallPacket.Plans;

/// <summary>The sums by which planners join published equations. They are plain arithmetic and claim no source beyond that.</summary>
public static class PlanFormulas
{
    /// <summary>All of them, for the tests and the page of equations.</summary>
    public static IReadOnlyList<Formula> All =>
        [.. SitingFormulas.All, .. ReceptionFormulas.All, .. CablingFormulas.All, .. RoutingFormulas.All, .. MountingFormulas.All,
            .. BondingFormulas.All, .. MaterialsFormulas.All];
}
