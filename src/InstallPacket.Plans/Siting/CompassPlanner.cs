using System.Globalization;
using InstallPacket.Calc.Quantities;
using InstallPacket.Calc.Siting;

namespace InstallPacket.Plans.Siting;

/// <summary>Computes the magnetic declination on the day of work, with the model's rules on date and weak field.</summary>
internal sealed class CompassPlanner(Job job, Workings work, FindingList findings)
{
    public CompassPlan Plan()
    {
        var year = DecimalYear.Of(job.Date.Value);
        if (!MagneticModel.Covers(year))
        {
            findings.Add(Severity.Caution, "compass-date", job.Date.At,
                ("date", job.Date.Value.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture)));
            return new(false, "no magnetic model covers the date", null, null, null, null, "none", "unknown");
        }
        var (lat, lon) = (job.Siting.LatitudeDeg.Value, job.Siting.LongitudeDeg.Value);
        var heightKm = job.Siting.Ground.Value.Metres / 1000;
        var field = MagneticModel.At(lat, lon, heightKm, year);
        work.Apply(MagneticModel.DeclinationFormula, field.ModelName, job.Latitude(), job.Longitude(), job.Ground().In(0.001),
            Term.Key("date", year));
        work.Apply(MagneticModel.DeclinationSigmaFormula, field, field.ModelName, Term.Plan("siting.compass.horizontal_nt", field.H));
        var why = Zone(field);
        return new(why.Length == 0, why, field.DeclinationDeg, field.SigmaDeclinationDeg, field.DeclinationRateDegPerYear, field.H,
            field.ModelName,
            field.Zone.ToString().ToLowerInvariant());
    }

    private string Zone(MagneticField field)
    {
        if (field.Zone == CompassZone.Usable) return "";
        var blackout = field.Zone == CompassZone.Blackout;
        findings.Add(Severity.Caution, blackout ? "compass-blackout" : "compass-weak", job.Siting.LatitudeDeg.At, ("field_nt", field.H));
        return blackout ? "the horizontal field is too weak for a compass" : "";
    }
}
