namespace InstallPacket.Plans.Routing;

/// <summary>A straight leg of a run and how it lies.</summary>
internal sealed record RunLeg(HousePoint From, HousePoint To, CableWay Way)
{
    public double LengthM => Math.Sqrt(LevelM * LevelM + RiseM * RiseM);

    public double RiseM => To.HeightM - From.HeightM;

    private double LevelM => Math.Sqrt(Square(To.RightM - From.RightM) + Square(To.UpM - From.UpM));

    /// <summary>Steeper than 45 degrees.</summary>
    public bool Upright => Math.Abs(RiseM) > LevelM;

    public bool Outdoors => Way is CableWay.Outside or CableWay.Span or CableWay.Buried;

    public bool Indoors => Way is CableWay.Attic or CableWay.Wall or CableWay.CrawlSpace;

    /// <summary>By how much the next leg turns off this one [deg].</summary>
    public double TurnDeg(RunLeg next)
    {
        var dot = (To.RightM - From.RightM) * (next.To.RightM - next.From.RightM) + (To.UpM - From.UpM) * (next.To.UpM - next.From.UpM)
            + RiseM * next.RiseM;
        return Math.Acos(Math.Clamp(dot / (LengthM * next.LengthM), -1, 1)) * 180 / Math.PI;
    }

    /// <summary>The legs of a run; the way may change at its points.</summary>
    public static IReadOnlyList<RunLeg> Of(RoutingSection routing, Run run)
    {
        // A run that is known by its length has no legs: nobody measured its points.
        if (run.Given is not null) return [];
        var way = run.Way;
        var legs = new List<RunLeg>();
        for (var i = 1; i < run.Path.Count; i++)
        {
            way = run.Ways.FirstOrDefault(w => w.Point == run.Path[i - 1])?.Way ?? way;
            legs.Add(new(routing.Points[run.Path[i - 1]], routing.Points[run.Path[i]], way));
        }
        return legs;
    }

    private static double Square(double x) => x * x;
}
