using InstallPacket.Calc.Mounting;
using InstallPacket.Calc.Quantities;
using InstallPacket.Jobs;
using InstallPacket.Jobs.Parts;

namespace InstallPacket.Plans;

/// <summary>What the wind does to antenna and mast, and what the tube can bear.</summary>
internal sealed class WindPlanner(Job job, WorkLog log, FindingList findings)
{
    /// <summary>Moment at the upper support beyond which a structural proof is asked for [N m] (read: European practice for antennas; used everywhere by choice).</summary>
    private const double EngineerNm = EuropeanMastRule.GreatestMomentNm;

    private const double NearLimit = 0.8;
    private const double SlenderCf = WindForce.SlenderRoundCf;
    private readonly MountingSection _mounting = job.Mounting;
    private readonly UnitPrinter _print = UnitPrinter.Of(job);

    /// <summary>The plan, or null when the job does not say enough; a finding then says what is missing.</summary>
    public WindPlan? Plan()
    {
        if (_mounting.Kind == "attic") return null;
        if (_mounting.Wind is not { } wind)
        {
            findings.Add(Severity.Caution, "wind-unknown", _mounting.At, "the job does not say which wind the mount must stand", "no wind speed is guessed (our rule)", "look it up in the official map and write `mounting.wind`");
            return null;
        }
        if (wind.Exposure.Value is "B" or "C" or "D" != (job.Code == "us"))
        {
            findings.Add(Severity.Stop, "exposure-unfit", wind.Exposure.At, $"mounting.wind.exposure is `{wind.Exposure.Value}` in the code family `{job.Code}`", job.Code == "us" ? "B, C or D" : "0, I, II, III or IV", "use a word of this family");
            return null;
        }
        if (wind.Crest)
            findings.Add(Severity.Stop, "wind-on-crest", wind.At, "the house stands on a crest, a ridge or a cliff", "there the wind is stronger than the rules for flat ground say (ASCE 7 topographic factor, EN 1991-1-4 orography)", "have an engineer state the wind for this place");
        return Area() is { } area && Tube() is { } tube ? Reckon(wind, area, tube) : null;
    }

    private double? Area()
    {
        var antennas = job.Cabling.Chain.Where(e => e.Part.Kind == "antenna").Select(e => e.Part).ToArray();
        if (antennas.FirstOrDefault(a => a.WindAreaM2 is null) is not { } silent) return antennas.Sum(a => a.WindAreaM2!.Value);
        Missing(silent, "wind-area");
        return null;
    }

    private MastSection? Tube()
    {
        if (_mounting.Mast is { DiameterM: { } outer, WallM: { } wall } && wall < outer / 2) return new MastSection(outer, wall);
        Missing(_mounting.Mast, _mounting.Mast.DiameterM is null ? "diameter" : "wall");
        return null;
    }

    private void Missing(Part part, string figure) => findings.Add(Severity.Caution, "strength-unknown", part.At, $"the part `{part.Id}` does not state `{figure}`", "without it nothing is said about the strength of the mast", $"add `{figure}` to the part from the maker's sheet");

    private WindPlan Reckon(DesignWind wind, double areaM2, MastSection tube)
    {
        var height = Math.Max(job.Siting.AntennaHeight.Value.Metres, 1);
        var pressure = job.Code == "us" ? Asce(wind, height) : Eurocode(wind, height);
        // Strength is checked with allowable stress: 0.6 of the ultimate wind for `us`, the partial factor against yield for `eu`.
        var force = Design(log.Record(WindForce.ForceFormula, "antenna", WindForce.ForceN(pressure, 1, areaM2), pressure, 1, areaM2), "antenna");
        var line = Design(log.Record(WindForce.LineLoadFormula, "mast", WindForce.LineLoadNPerM(pressure, 1, SlenderCf, tube.OuterM), pressure, 1, SlenderCf, tube.OuterM), "mast");
        var free = _mounting.FreeLength.Metres;
        var spacing = _mounting.Spacing?.Metres ?? Math.Max(0.05, _mounting.MastLength.Metres - free);
        var mast = new MastCase([new MastLoad(force, free)], line, free, spacing);
        var material = MastTubes.Material(_mounting.Mast.Material ?? "") ?? MastTubes.UnknownSteel;
        var moment = log.Record(MastBending.MomentFormula, "mast", MastBending.MomentNm(mast), force, free, line, free);
        var allowable = Allowable(tube, material);
        var use = log.Record(MastStrength.UtilisationFormula, "mast", MastStrength.Utilisation(moment, allowable), moment, allowable);
        var lower = log.Record(MastBending.LowerReactionFormula, "mast", MastBending.LowerReactionN(mast), moment, spacing, 0);
        var upper = log.Record(MastBending.UpperReactionFormula, "mast", MastBending.UpperReactionN(mast), force, line, free, moment, spacing, 0);
        var tip = MastBending.TipDeflectionM(mast, tube, material.ModulusPa);
        log.Record(MastBending.DeflectionFormula, "mast", 1000 * tip, force, free, line, free, spacing, MastSway.StiffnessNm2(tube, material.ModulusPa));
        Check(moment, allowable, use, material);
        return new WindPlan(wind.SpeedMS, wind.Exposure.Value, height, pressure, areaM2, force, line, free, spacing, material.Name, material.Provenance == Calc.Sources.Provenance.Derived, moment, allowable, use, upper, lower, tip);
    }

    private double Asce(DesignWind wind, double height)
    {
        var exposure = Enum.Parse<WindExposure>(wind.Exposure.Value);
        var profile = WindProfile.Of(AsceEdition.Asce716, exposure);
        var kz = log.Record(WindAsce.ExposureFormula, "antenna", WindAsce.Kz(AsceEdition.Asce716, exposure, height), height, profile.Coefficient, profile.GradientM, profile.Alpha);
        return log.Record(WindAsce.PressureFormula, "antenna", WindAsce.VelocityPressurePa(wind.SpeedMS, kz, WindAsce.DirectionalityKd), wind.SpeedMS, kz, WindAsce.DirectionalityKd, 1, 1);
    }

    private double Eurocode(DesignWind wind, double height)
    {
        var terrain = TerrainCategory.Find(wind.Exposure.Value)!;
        var mean = log.Record(WindEurocode.MeanVelocityFormula, "antenna", WindEurocode.MeanVelocityMS(terrain, height, wind.SpeedMS), wind.SpeedMS, height, terrain.RoughnessM, terrain.LeastHeightM, 1);
        var turbulence = log.Record(WindEurocode.TurbulenceFormula, "antenna", WindEurocode.Turbulence(terrain, height), height, terrain.RoughnessM, terrain.LeastHeightM, 1, 1);
        return log.Record(WindEurocode.PeakPressureFormula, "antenna", WindEurocode.PeakPressurePa(terrain, height, wind.SpeedMS), turbulence, mean, WindEurocode.AirDensityKgM3);
    }

    private double Design(double load, string subject) => job.Code == "us"
        ? log.Record(AllowableStress.WindLoadFormula, subject, AllowableStress.WindLoad(load), load)
        : log.Record(PlanFormulas.DesignWindLoad, subject, WindEurocode.PartialFactor * load, load, WindEurocode.PartialFactor);

    private double Allowable(MastSection tube, MastMaterial material)
    {
        if (job.Code != "us") return log.Record(PlanFormulas.DesignResistance, "mast", material.YieldPa * tube.SectionModulusM3, material.YieldPa / 1e6, tube.SectionModulusM3 * 1e9);
        var allowable = MastStrength.AllowableNm(tube, material);
        var (formula, modulus) = material.IsAluminium ? (MastStrength.AluminiumFormula, tube.SectionModulusM3)
            : Math.Abs(allowable - MastStrength.PlasticNm(tube, material.YieldPa)) < 1e-9 ? (MastStrength.PlasticFormula, tube.PlasticModulusM3) : (MastStrength.ElasticFormula, tube.SectionModulusM3);
        return log.Record(formula, "mast", allowable, material.YieldPa / 1e6, modulus * 1e9);
    }

    private void Check(double moment, double allowable, double use, MastMaterial material)
    {
        var found = $"the wind bends the mast with {_print.Moment(moment)} at its upper support, {UnitText.Number(use, 2)} of what it bears";
        if (use > 1)
            findings.Add(Severity.Stop, "mast-overstressed", _mounting.FreeLengthAt, found, $"{_print.Moment(allowable)} for this tube ({material.Name})", "shorten the free length, take a stronger tube, or guy the mast (which an engineer should plan)");
        else if (use > NearLimit)
            findings.Add(Severity.Caution, "mast-near-limit", _mounting.FreeLengthAt, found, $"{_print.Moment(allowable)} for this tube ({material.Name}); more than 0.8 of it leaves little for ice and age (our rule)", $"shorten the free length of {_print.Length(_mounting.FreeLength.Metres)}, or take a stronger tube");
        if (moment > EngineerNm)
            findings.Add(Severity.Stop, "mast-needs-engineer", _mounting.FreeLengthAt, found, $"beyond {_print.Moment(EngineerNm)} a structural proof is needed (EN 60728-11 practice, read in a secondary text; used everywhere by our choice)", "have an engineer prove the mount, or shorten the mast");
    }
}
