using InstallPacket.Calc.Quantities;
using InstallPacket.Calc.Siting;
using InstallPacket.Calc.Sources;

namespace InstallPacket.Plans.Materials;

/// <summary>Rough hours by task, from the table or from the job, and the daylight of the day.</summary>
internal sealed class TimePlanner(Job job, RoutingPlan routing, Workings work, FindingList findings)
{
    private const double SunriseDeg = -0.833;
    private const int Moments = 288;
    private static readonly IReadOnlyList<IReadOnlyDictionary<string, string>> Table = PlanTable.Rows("Materials/hours.csv");

    public TimePlan Plan(IReadOnlyList<PiecePlan> pieces)
    {
        foreach (var own in job.Materials.Hours.Where(h => Table.All(r => r["id"] != h.Name)))
            findings.Add(Severity.Caution, "task-unknown", own.At, ("task", own.Name), ("known", Table.Select(r => r["id"])));
        TaskPlan[] tasks = [.. Table.Select(r => Task(r, Count(r["per"], pieces))).Where(t => t.Count > 0 || t.LengthM > 0)];
        var crew = job.Materials.Crew;
        var (all, outdoors) = (tasks.Sum(t => t.PersonH), tasks.Where(t => t.Outdoors).Sum(t => t.PersonH));
        var plan = new TimePlan(crew, tasks, all, Clock("all tasks", "person_h", all), Clock("outdoors", "outdoor_person_h", outdoors),
            Daylight()) { OutdoorPersonH = outdoors };
        if (plan.OutdoorClockH > plan.DaylightH)
            findings.Add(Severity.Caution, "day-too-short", job.Date.At, ("outdoors_h", plan.OutdoorClockH), ("crew", crew),
                ("daylight_h", plan.DaylightH));
        return plan;
    }

    private Row Clock(Subject subject, string key, double personH) =>
        work.Apply(MaterialsFormulas.ClockHours, subject, Term.Plan("materials.time." + key, personH),
            Term.Key("materials.crew", job.Materials.Crew));

    private TaskPlan Task(IReadOnlyDictionary<string, string> row, double times)
    {
        var own = job.Materials.Hours.FirstOrDefault(h => h.Name == row["id"]);
        var each = own?.Value ?? CsvNumber.Of(row["hours"]);
        var hours = times > 0
            ? work.Apply(MaterialsFormulas.TaskHours, $"task {row["id"]}",
            Term.Plan($"materials.time.tasks[{row["id"]}].{(row["per"].StartsWith("metre", StringComparison.Ordinal) ? "length_m" : "count")}", times),
            own is null ? Term.Table(NumberTables.Hours, row["id"], each) : Term.Key($"materials.hours.{row["id"]}", each)).Number : 0;
        var byLength = row["per"].StartsWith("metre", StringComparison.Ordinal);
        double? length = byLength ? job.Units == UnitFamily.Us ? 10 * Length.MetresPerFoot : 10 : null;
        return new(row["id"], byLength ? "" : row["per"], byLength ? null : (int)times, byLength ? times : null, each * (length ?? 1),
            length, hours,
            row["place"] == "outdoors", own is null ? row["provenance"] : "job");
    }

    private double Count(string per, IReadOnlyList<PiecePlan> pieces) => per switch
    {
        "job" => 1,
        "mount" => job.Mounting.Existing ? 0 : 1,
        "piece" => pieces.Count(p => p.Kind != PieceKind.Bonding),
        "antenna" => job.Cabling.Chain.Count(e => e is { Existing: false, Part: AntennaPart }),
        "metre outside" => Metres(CableWay.Outside, CableWay.Span),
        "metre in attic or crawl space" => Metres(CableWay.Attic, CableWay.CrawlSpace),
        "metre in walls" => Metres(CableWay.Wall),
        "metre in conduit" => Metres(CableWay.Conduit),
        "metre buried" => Metres(CableWay.Buried),
        "entry" => routing.Entries.Count > 0 ? routing.Entries.Where(e => !e.Existing).Sum(e => Math.Max(1, e.Runs.Count))
            : routing.Runs.Sum(r => r.DripLoops.Count),
        "device" => job.Cabling.Chain.Count(e => e is { Existing: false, Part: not (AntennaPart or OutletPart) }),
        "outlet" => job.Cabling.Chain.Count(e => e is { Existing: false, Part: OutletPart }),
        "bonding conductor" => pieces.Count(p => p.Kind == PieceKind.Bonding),
        _ => throw new InvalidOperationException($"Nothing counts '{per}'."),
    };

    private double Metres(params CableWay[] ways) => routing.Runs.Where(r => !r.Existing).Sum(r => r.LengthM * r.ShareIn(ways));

    private double Daylight()
    {
        var (lat, lon) = (job.Siting.LatitudeDeg.Value, job.Siting.LongitudeDeg.Value);
        var midnight = new DateTimeOffset(job.Date.Value.ToDateTime(TimeOnly.MinValue, DateTimeKind.Unspecified), job.Siting.UtcOffset
            ?? TimeSpan.Zero);
        var light = Enumerable.Range(0, Moments).Count(i => SunPosition.At(lat, lon, midnight.AddMinutes(5 * i)).ElevationDeg > SunriseDeg);
        return work.Apply(MaterialsFormulas.Daylight, 24.0 * light / Moments, "day of work", job.Latitude(), job.Longitude());
    }
}
