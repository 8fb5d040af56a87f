using InstallPacket.Calc.Quantities;
using InstallPacket.Jobs;

namespace InstallPacket.Plans.Mounting;

/// <summary>Collects checks of capacity, with a finding for each that fails or cannot be made.</summary>
internal sealed class HoldLedger(Job job, Workings work, FindingList findings)
{
    private readonly List<HoldCheck> _checks = [];
    private readonly List<string> _unproved = [];
    private readonly UnitPrinter _print = UnitPrinter.Of(job);

    /// <summary>Figures of each screw in its place.</summary>
    public List<ScrewPlan> Screws { get; } = [];

    public IReadOnlyList<HoldCheck> Checks => _checks;

    public IReadOnlyList<string> Unproved => _unproved;

    private static Given Check(string what, string key, double number) => MountTerms.Hold($"checks[{what}].{key}", number);

    /// <summary>A force against what bears it.</summary>
    public void Force(string id, string what, double demandN, double bearsN, string basis, string provenance, SourceSpan at, string remedy) => Add(
        new(id, what, work.Apply(MountingFormulas.Use, what, Check(what, "demand_n", demandN), Check(what, "bears_n", bearsN)), basis, provenance) { DemandN = demandN, BearsN = bearsN },
        $"{_print.Force(demandN)}", _print.Force(bearsN), at, remedy);

    /// <summary>A stress against what bears it.</summary>
    public void Stress(string id, string what, double demandPa, double bearsPa, string basis, string provenance, SourceSpan at, string remedy) => Add(
        new(id, what, work.Apply(MountingFormulas.StressUse, what, Check(what, "demand_pa", demandPa), Check(what, "bears_pa", bearsPa)), basis, provenance) { DemandPa = demandPa, BearsPa = bearsPa },
        _print.Pressure(demandPa), _print.Pressure(bearsPa), at, remedy);

    /// <summary>A check whose share was reckoned elsewhere.</summary>
    public void Add(HoldCheck check, string demand, string bears, SourceSpan at, string remedy)
    {
        _checks.Add(check);
        if (check.UseShare <= 1) return;
        var share = double.IsFinite(check.UseShare) ? $"{UnitText.Number(check.UseShare, 2)} of what it bears" : "and it bears nothing";
        findings.Add(Severity.Stop, "capacity-exceeded", at, $"{check.What}: {demand}, {share}", $"{(double.IsFinite(check.UseShare) ? bears : "too little of it bites into the timber to count")} ({check.Basis}{(check.Provenance == "memory" ? ", recalled: verify" : "")})", remedy);
    }

    /// <summary>Something that cannot be checked.</summary>
    public void Unknown(string what, SourceSpan at, string found, string remedy)
    {
        if (_unproved.Contains(what)) return;
        _unproved.Add(what);
        findings.Add(Severity.Caution, "capacity-unknown", at, found, $"without it the packet does not say whether {what} bears the wind", remedy);
    }
}
