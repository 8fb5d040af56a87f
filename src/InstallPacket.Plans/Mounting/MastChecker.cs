using InstallPacket.Calc.Mounting;
using InstallPacket.Calc.Quantities;
using InstallPacket.Calc.Sources;

namespace InstallPacket.Plans.Mounting;

/// <summary>Bending, support forces, sway and pointing of the mast, and what its tube bears.</summary>
internal sealed class MastChecker(Job job, CodeFamily code, Workings work, FindingList findings)
{
    /// <summary>Moment at the upper support beyond which a structural proof is asked for [N m] (read: European practice for antennas; used
    /// everywhere by choice).</summary>
    private const double EngineerNm = EuropeanMastRule.GreatestMomentNm;

    private const double NearLimit = 0.8;
    private readonly MountingSection _mounting = job.Mounting;

    /// <summary>The part of the plan that the mast decides.</summary>
    /// <param name="tube">Cross-section.</param>
    /// <param name="force">Force on the antennas for the strength check [N].</param>
    /// <param name="line">Force on each metre of mast for the strength check [N/m].</param>
    /// <param name="service">Pressure of the gust for pointing over that of the job.</param>
    public WindPlan Plan(MastSection tube, Term force, Term line, double service)
    {
        var frame = code.Mast.GuysHold ? MastFrame.Guyed(_mounting) : MastFrame.Fixed(_mounting);
        var material = MastTubes.Material(_mounting.Mast.Material ?? "") ?? MastTubes.UnknownSteel;
        var several = frame.SupportsM.Count > 2 || frame.Exposed;
        var (supports, moment) = frame.Clamped ? One(frame, force, line) : several ? Several(frame, force, line) : Two(frame, force, line);
        var allowable = code.Mast.Resistance(work, tube, material);
        var use = work.Apply(MastStrength.UtilisationFormula, "mast", moment, allowable);
        var stress = 1e6 * work.Apply(MastStrength.StressFormula, "mast", moment, tube.Section());
        var mast = new MastCase([new MastLoad(force, frame.FreeM)], line, frame.FreeM, frame.SpacingM);
        Term free = MountTerms.Wind("free_m", frame.FreeM), spacing = MountTerms.Wind("spacing_m", frame.SpacingM);
        var tip = work.Apply(MastBending.DeflectionFormula, new BentMast(mast, tube, material.ModulusPa), "mast",
            force, free, line, free, spacing, MountTerms.Stiffness(tube, material.ModulusPa)) / 1000;
        Check(moment, allowable, use, material, new TubeChooser(job, code.Mast, frame, material, force, line, tube.OuterM).Lightest());
        CheckFree(frame);
        var pointing = new PointingChecker(job, work, findings);
        var (tilt, frequency) = (pointing.Tilt(mast, tube, material, service / code.Wind.DesignFactor),
            pointing.Frequency(frame, tube, material));
        return new WindPlan(0, "", 0, 0, 0, force, line, frame.FreeM, frame.SpacingM, material.Name,
            material.Provenance == Provenance.Derived, moment, allowable, use,
            frame.Clamped ? supports[0].ForceN : supports[1].ForceN, frame.Clamped ? 0 : -supports[0].ForceN, tip)
        {
            StiffnessNm2 = MastSway.StiffnessNm2(tube, material.ModulusPa), SectionMm3 = tube.SectionModulusM3 * 1e9,
                PlasticMm3 = tube.PlasticModulusM3 * 1e9,
            MastKgPerM = tube.MassKgM(material.DensityKgM3), TopKg = pointing.TopKg,
                ServiceForceN = force * (service / code.Wind.DesignFactor), ServiceLineNPerM = line * (service / code.Wind.DesignFactor),
            TubeMethod = code.Mast.Method, Supports = supports, StressPa = stress, ServiceTiltDeg = tilt, FrequencyHz = frequency,
        };
    }

    private (MastSupport[] Supports, Term MomentNm) One(MastFrame frame, Term force, Term line)
    {
        Term a = MountTerms.Wind("free_m", frame.FreeM);
        var mast = new MastCase([new MastLoad(force, frame.FreeM)], line, frame.FreeM, 0);
        var moment = work.Apply(MastBending.MomentFormula, mast, "mast", force, a, line, a);
        var held = work.Apply(OnePlate.ForceFormula, "arm of the mount", force, line, a);
        return ([new("arm of the mount", frame.SupportsM[0], held)], moment);
    }

    private (MastSupport[] Supports, Term MomentNm) Two(MastFrame frame, Term force, Term line)
    {
        var (free, spacing) = (frame.FreeM, frame.SpacingM);
        var mast = new MastCase([new MastLoad(force, free)], line, free, spacing);
        Term a = MountTerms.Wind("free_m", free), b = MountTerms.Wind("spacing_m", spacing);
        var moment = work.Apply(MastBending.MomentFormula, mast, "mast", force, a, line, a);
        var lower = work.Apply(MastBending.LowerReactionFormula, mast, "mast", moment, b, MountTerms.None);
        var upper = work.Apply(MastBending.UpperReactionFormula, mast, "mast", force, line, a, moment, b, MountTerms.None);
        return (Named(frame, [-lower, upper]), moment);
    }

    private (MastSupport[] Supports, Term MomentNm) Several(MastFrame frame, Term force, Term line)
    {
        var forces = frame.Forces(force, line);
        var supports = Named(frame, forces.ReactionsN);
        for (var i = 0; i < supports.Length; i++)
        {
            Term height = MountTerms.Wind($"supports[{supports[i].Name}].height_m", supports[i].HeightM),
                free = MountTerms.Wind("free_m", frame.FreeM);
            work.Apply(ContinuousMast.MomentsFormula, forces.MomentsNm[i], supports[i].Name, height, force, free, line);
            work.Apply(ContinuousMast.ReactionFormula, supports[i].ForceN, supports[i].Name, height, force, free, line);
        }
        return (supports, MountTerms.Wind("moment_nm", forces.GreatestNm));
    }

    private static MastSupport[] Named(MastFrame frame, IReadOnlyList<double> forces) =>
        [.. frame.SupportsM.Select((z, i) =>
            new MastSupport(i switch { 0 => "lower support", 1 => "upper support", _ => $"ring {i - 1}" }, z, forces[i]))];

    private void CheckFree(MastFrame frame)
    {
        if (frame.FreeM <= EuropeanMastRule.GreatestFreeM + 1e-9) return;
        findings.Add(Severity.Stop, "mast-needs-engineer", "free", _mounting.FreeLengthAt, ("free_m", frame.FreeM),
            ("most_m", EuropeanMastRule.GreatestFreeM));
    }

    private void Check(double moment, double allowable, double use, MastMaterial material, string? stronger)
    {
        (string, object?)[] values =
        [
            ("moment_nm", moment), ("guyed", _mounting.Guys is not null && code.Mast.GuysHold), ("use_share", use),
                ("allowable_nm", allowable),
            ("material", material.Name), ("stronger", stronger), ("free_m", _mounting.FreeLength.Metres),
        ];
        if (use > 1) findings.Add(Severity.Stop, "mast-overstressed", _mounting.FreeLengthAt, values);
        else if (use > NearLimit) findings.Add(Severity.Caution, "mast-near-limit", _mounting.FreeLengthAt, values);
        if (moment > EngineerNm)
            findings.Add(Severity.Stop, "mast-needs-engineer", "moment", _mounting.FreeLengthAt, [.. values, ("most_nm", EngineerNm)]);
    }
}
