using InstallPacket.Calc.Quantities;

namespace InstallPacket.Plans.Mounting;

/// <summary>Collects checks of capacity, with a finding for each that fails or cannot be made.</summary>
internal sealed class LoadPathLedger(Workings work, FindingList findings)
{
    private readonly List<LoadPathCheck> _checks = [];
    private readonly List<string> _unproved = [];

    /// <summary>Figures of each screw in its place.</summary>
    public List<ScrewPlan> Screws { get; } = [];

    public IReadOnlyList<LoadPathCheck> Checks => _checks;

    public IReadOnlyList<string> Unproved => _unproved;

    private static Given Check(string what, string key, double number) => MountTerms.LoadPath($"checks[{what}].{key}", number);

    /// <summary>A force against a capacity. The identifier is the case of the finding.</summary>
    public void Force(string id, string what, double demandN, double bearsN, string basis, string provenance, SourceSpan at,
        params ReadOnlySpan<(string Name, object? Value)> more) => Add(
        new(id, what, work.Apply(MountingFormulas.Use, what, Check(what, "demand_n", demandN), Check(what, "bears_n", bearsN)), basis,
            provenance)
        {
            DemandN = demandN, BearsN = bearsN,
        },
        at, [("demand_n", demandN), ("capacity_n", bearsN), .. more]);

    /// <summary>A stress against a capacity.</summary>
    public void Stress(string id, string what, double demandPa, double bearsPa, string basis, string provenance, SourceSpan at) => Add(
        new(id, what, work.Apply(MountingFormulas.StressUse, what, Check(what, "demand_pa", demandPa), Check(what, "bears_pa", bearsPa)),
            basis, provenance)
        {
            DemandPa = demandPa, BearsPa = bearsPa,
        },
        at, ("demand_pa", demandPa), ("capacity_pa", bearsPa));

    /// <summary>A moment against a capacity.</summary>
    public void Moment(string id, string what, double demandNm, double bearsNm, string basis, string provenance, SourceSpan at) => Add(
        new(id, what, work.Apply(MountingFormulas.MomentUse, what, Check(what, "demand_nm", demandNm), Check(what, "bears_nm", bearsNm)),
            basis, provenance)
        {
            DemandNm = demandNm, BearsNm = bearsNm,
        },
        at, ("demand_nm", demandNm), ("capacity_nm", bearsNm));

    /// <summary>A wind area against a capacity.</summary>
    public void Area(string id, string what, double demandM2, double bearsM2, string basis, string provenance, SourceSpan at) => Add(
        new(id, what, work.Apply(MountingFormulas.AreaUse, what, Check(what, "demand_m2", demandM2), Check(what, "bears_m2", bearsM2)),
            basis, provenance)
        {
            DemandM2 = demandM2, BearsM2 = bearsM2,
        },
        at, ("demand_m2", demandM2), ("capacity_m2", bearsM2));

    /// <summary>Keeps a check, and reports it when the capacity is exceeded. The check's identifier is the case of the finding.</summary>
    public void Add(LoadPathCheck check, SourceSpan at, params ReadOnlySpan<(string Name, object? Value)> values)
    {
        _checks.Add(check);
        if (check.UseShare <= 1) return;
        findings.Add(Severity.Stop, "capacity-exceeded", check.Id, at,
            [("what", check.What), ("use_share", check.UseShare), ("basis", check.Basis), ("provenance", check.Provenance), .. values]);
    }

    /// <summary>Keeps what no figure shows of a mount that is there already; the steps inspect it.</summary>
    public void NotSeen(string what) => _unproved.Add(what);

    /// <summary>Reports once what cannot be checked, and why by the case.</summary>
    public void Unknown(string what, string way, SourceSpan at, params ReadOnlySpan<(string Name, object? Value)> values)
    {
        if (_unproved.Contains(what)) return;
        _unproved.Add(what);
        findings.Add(Severity.Caution, "capacity-unknown", way, at, [("what", what), .. values]);
    }
}
