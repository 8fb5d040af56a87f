using InstallPacket.Calc.Quantities;
using InstallPacket.Jobs;

namespace InstallPacket.Plans;

/// <summary>Gathers what the job says of bonding and sets the rules of the code family beside it.</summary>
internal sealed class BondingPlanner(Job job, CodeFamily code, FindingList findings)
{
    private const double UsShieldLimitM = 20 * Length.MetresPerFoot;

    public BondingPlan Plan()
    {
        var b = job.Bonding;
        var block = job.Cabling.Chain.FirstOrDefault(e => e.Part.Kind == "grounding-block");
        if (block is null && job.Mounting.Kind != "attic")
            findings.Add(Severity.Caution, "grounding-block-missing", job.Cabling.ChainAt, "the chain has no grounding block",
                "the shield of an outdoor lead-in is bonded at the entry (NEC 810.20, 820.100; EN IEC 60728-11)", "add a grounding block where the cable enters the house");
        if (code.Id == "us" && b.ShieldLength.Metres > UsShieldLimitM + 1e-9)
            findings.Add(Severity.Caution, "bond-too-long", b.ShieldLengthAt, $"the shield's bonding conductor is {UnitText.Write(b.ShieldLength.Feet, 1, "ft")} long",
                "20 ft in one- and two-family houses (NEC 820.100(A)(4), 2005 edition read); check the local code", "move the entry nearer to the service, or ask the electrician about a rod of its own");
        return new BondingPlan(b.Connection, b.Conductor.Name, b.Conductor.Id, b.MastLength.Metres, b.ShieldLength.Metres, b.By, b.Note ?? "", block?.Id ?? "", code.RulesOf("bonding"));
    }
}
