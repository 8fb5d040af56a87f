using InstallPacket.Calc.Mounting;

namespace InstallPacket.Plans.Mounting;

/// <summary>What the wind does to antenna and mast, and what the tube can bear.</summary>
internal sealed class WindPlanner(Job job, CodeFamily code, Workings work, FindingList findings)
{
    private static readonly Constant SlenderCf = new("cf-slender-round", WindForce.SlenderRoundCf, "asce-7-16",
        Calc.Sources.Provenance.Read);
    private static readonly Constant RigidMast = new("gust-effect-of-a-rigid-mast", 1, "asce-7-16", Calc.Sources.Provenance.Read);

    // A gust of 50 mph at which pointing is judged (our choice; q = 0.613 V^2).
    private const double ServiceMs = 50 * 0.44704;

    private readonly MountingSection _mounting = job.Mounting;

    /// <summary>The plan, or null when the job does not say enough; a finding then says what is missing.</summary>
    public WindPlan? Plan()
    {
        if (_mounting.Kind == MountKind.Attic) return null;
        if (_mounting.Wind is not { } wind)
        {
            findings.Add(Severity.Caution, "wind-unknown", _mounting.At);
            return null;
        }
        if (!code.Wind.Exposures.Contains(wind.Exposure.Value))
        {
            findings.Add(Severity.Stop, "exposure-unfit", wind.Exposure.At, ("exposure", wind.Exposure.Value), ("family", code.Id),
                ("words", code.Wind.Exposures));
            return null;
        }
        if (wind.Crest)
            findings.Add(Severity.Stop, "wind-on-crest", wind.At);
        if (!RingsFit()) return null;
        return Area() is { } area && Tube() is { } tube ? Calculate(wind, area, tube) : null;
    }

    private bool RingsFit()
    {
        if (_mounting.Guys is not { } guys) return true;
        var below = _mounting.MastLength.Metres - _mounting.FreeLength.Metres;
        foreach (var set in guys.Sets)
        {
            if (set.RingM > below + 0.05 && set.RingM < _mounting.MastLength.Metres)
            {
                below = set.RingM;
                continue;
            }
            findings.Add(Severity.Stop, "guy-ring-unfit", set.At, ("ring_m", set.RingM), ("below_m", below),
                ("top_m", _mounting.MastLength.Metres));
            return false;
        }
        return true;
    }

    private double? Area()
    {
        double sum = 0;
        foreach (var antenna in job.Cabling.Antennas)
        {
            if (AntennaArea.Of(antenna, work) is not { } area)
            {
                Missing(antenna, "wind-area");
                return null;
            }
            sum += area;
        }
        return sum;
    }

    private MastSection? Tube()
    {
        if (_mounting.Mast is { DiameterM: { } outer, WallM: { } wall } && wall < outer / 2) return new MastSection(outer, wall);
        Missing(_mounting.Mast, _mounting.Mast.DiameterM is null ? "diameter" : "wall");
        return null;
    }

    private void Missing(Part part, string figure) =>
        findings.Add(Severity.Caution, "strength-unknown", part.At, ("part", part.Id), ("figure", figure));

    private WindPlan Calculate(DesignWind wind, double areaM2, MastSection tube)
    {
        var height = Math.Max(job.Siting.AntennaHeight.Value.Metres, 1);
        var pressure = code.Wind.PressurePa(work, wind, height);
        var gust = work.Apply(WindForce.ForceFormula, "antenna", pressure, RigidMast, MountTerms.Wind("area_m2", areaM2));
        // The cable down the mast widens it for the wind.
        var width = tube.OuterM + CablesM();
        var gustLine = work.Apply(WindForce.LineLoadFormula, "mast and its cable", pressure, RigidMast, SlenderCf,
            MountTerms.Wind("width_m", width));
        var (force, line) = (code.Wind.Design(work, gust, "antenna"), code.Wind.Design(work, gustLine, "mast"));
        return new MastChecker(job, code, work, findings).Plan(tube, force, line, 0.613 * ServiceMs * ServiceMs / pressure) with
        {
            SpeedMs = wind.SpeedMS, Exposure = wind.Exposure.Value, HeightM = height, PressurePa = pressure, AreaM2 = areaM2,
                ForceN = force, LineLoadNPerM = line,
            ServiceMs = ServiceMs, GustForceN = gust, GustLineNPerM = gustLine, WidthM = width,
        };
    }

    private double CablesM()
    {
        var antennas = job.Cabling.Chain.Where(e => e.Part is AntennaPart).Select(e => e.Id).ToHashSet(StringComparer.Ordinal);
        var runs = job.Cabling.Chain.SelectMany(e => new[] { (e.From, e.Run), (From: e.Second, Run: e.SecondRun) }).Where(l =>
            l.From is { } from && antennas.Contains(from)).Select(l => l.Run);
        return job.Routing.Runs.Where(r => runs.Contains(r.Id)).Sum(r => r.Cable.DiameterM ?? 0);
    }
}
