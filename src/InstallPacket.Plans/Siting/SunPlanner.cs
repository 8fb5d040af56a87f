using System.Globalization;
using InstallPacket.Calc.Quantities;
using InstallPacket.Calc.Siting;

namespace InstallPacket.Plans.Siting;

/// <summary>The sun at whole hours of the day of work, to check a bearing without a compass.</summary>
internal sealed class SunPlanner(Job job, Workings work)
{
    private const double LowestDeg = 5;    // lower, trees and air make a poor mark
    private const double HighestDeg = 60;  // higher, a small error in plumbing the shadow is a large one in bearing (common practice)

    public IReadOnlyList<SunHour> Plan(double aimDeg)
    {
        var offset = job.Siting.UtcOffset ?? TimeSpan.Zero;
        var rows = new List<SunHour>();
        for (var hour = 0; hour < 24; hour++)
        {
            var clock = job.Date.Value.ToDateTime(new TimeOnly(hour, 0), DateTimeKind.Unspecified);
            var instant = new DateTimeOffset(clock, offset);
            var sun = SunPosition.At(job.Siting.LatitudeDeg.Value, job.Siting.LongitudeDeg.Value, instant);
            if (sun.RefractedElevationDeg is < LowestDeg or > HighestDeg) continue;
            var name = clock.ToString("HH:mm", CultureInfo.InvariantCulture) + (job.Siting.UtcOffset is null ? " UTC" : "");
            work.Apply(SunPosition.AzimuthFormula, instant, name, job.Latitude(), job.Longitude(),
                Term.Plan($"reception.sun[{name}].utc_h", instant.UtcDateTime.TimeOfDay.TotalHours));
            rows.Add(new(name, sun.AzimuthDeg, sun.RefractedElevationDeg,
                Bearing.Turn(aimDeg, sun.AzimuthDeg)) { UtcH = instant.UtcDateTime.TimeOfDay.TotalHours });
        }
        return rows;
    }
}
