using InstallPacket.Calc.Mounting;

namespace InstallPacket.Plans.Mounting;

/// <summary>The load path from the mast into the house, roof or ground, and the capacity of each part in it.</summary>
internal sealed class LoadPathPlanner(Job job, CodeFamily code, Workings work, FindingList findings)
{
    private double? _antennasKg, _mastKg;
    private readonly MountingSection _mounting = job.Mounting;
    private readonly LoadPathLedger _ledger = new(work, findings);

    /// <summary>The plan; null without wind, or in the attic where there is none.</summary>
    public LoadPathPlan? Plan(WindPlan? wind)
    {
        if (wind is null) return null;
        var weight = Weight();
        if (_mounting.Existing) _ledger.NotSeen("rust inside the old mast and the hold of its old fixings");
        CheckRating(wind);
        var bracket = _mounting.Kind is MountKind.GableBracket or MountKind.WallBracket or MountKind.EaveBracket or MountKind.GroundMast
            ? new BracketPlanner(job, code, work, findings, _ledger) : null;
        var plate = _mounting.OnePlate ? new PlatePlanner(job, code, work, findings, _ledger) : null;
        plate?.Check(wind, weight);
        if (plate is null) bracket?.Check(wind, weight);
        var tripod = _mounting.Kind == MountKind.Tripod ? new TripodPlanner(job, code, work, _ledger) : null;
        tripod?.Check(wind);
        var chimney = _mounting.Kind == MountKind.ChimneyLashing ? new ChimneyPlanner(job, code, work, findings, _ledger) : null;
        chimney?.Check(wind);
        var ballast = _mounting.Kind == MountKind.Ballast ? new BallastPlanner(job, code, work, findings, _ledger).Plan(wind, weight)
            : null;
        var guying = new GuyPlanner(job, code, work, findings, _ledger);
        var guys = guying.Plan(wind, weight);
        return new LoadPathPlan(weight, PlateShape.Of(_mounting)?.ReachM ?? _mounting.Mount.StandOffM, _ledger.Checks, guys, ballast) { Unproved = _ledger.Unproved,
            Bracket = bracket?.Plan, Plate = plate?.Plan, Chimney = chimney?.Plan, AntennasKg = _antennasKg, MastKg = _mastKg, Tripod = tripod?.Plan,
            Column = guying.Column, Screws = _ledger.Screws };
    }

    private double? Weight()
    {
        var masses = job.Cabling.Antennas.Select(a => (Part: (Part)a, a.MassKg)).Append((_mounting.Mount, _mounting.Mount.MassKg));
        var silent = masses.FirstOrDefault(m => m.MassKg is null).Part;
        if (silent is not null)
        {
            _ledger.Unknown("the weight on the mount", "figure", silent.At, ("part", silent.Id), ("figure", PartKeys.Mass.Name));
            return null;
        }
        var antennas = job.Cabling.Antennas.Sum(a => a.MassKg!.Value);
        // The mass of a mount counts the mast that comes with it.
        var mast = _mounting.OwnMast ? 0 : MastKg();
        (_antennasKg, _mastKg) = (antennas, mast);
        return work.Apply(MountingFormulas.Weight, "mount", MountTerms.LoadPath("antennas_kg", antennas),
            MountTerms.LoadPath("mast_kg", mast), _mounting.Mount.Figure(PartKeys.Mass, _mounting.Mount.MassKg!.Value)).Number;
    }

    private double MastKg()
    {
        var material = MastTubes.Material(_mounting.Mast.Material ?? "") ?? MastTubes.UnknownSteel;
        return new MastSection(_mounting.Mast.DiameterM!.Value,
            _mounting.Mast.WallM!.Value).MassKgM(material.DensityKgM3) * _mounting.MastLength.Metres;
    }

    private void CheckRating(WindPlan wind)
    {
        if (_mounting.Mount.Rating is { } rating) CheckRating(rating, wind);
        if (_mounting.Mount.RatedN is { } rated) _ledger.Force("mount-rating", "the mount at its upper support", Math.Abs(wind.UpperN), rated, "its maker's sheet",
            _mounting.Mount.ProvenanceOf(MountPartKeys.Rated), _mounting.At);
    }

    private void CheckRating(MountRating rating, WindPlan wind)
    {
        var how = _mounting.Mount.ProvenanceOf(MountPartKeys.Rating);
        if (rating.MomentNm is { } moment) _ledger.Moment("mount-moment", "the mount by its maker's moment", wind.MomentNm, moment,
            "its maker's sheet", how, _mounting.At);
        if (rating.WindAreaM2 is { } area) _ledger.Area("mount-area", "the mount by its maker's wind area", wind.AreaM2, area,
            "its maker's sheet", how, _mounting.At);
    }
}
