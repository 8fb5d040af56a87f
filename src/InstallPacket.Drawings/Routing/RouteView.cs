using InstallPacket.Plans;

namespace InstallPacket.Drawings.Routing;

/// <summary>One view of the job on the sheet.</summary>
/// <param name="Frame">Its ground on the sheet.</param>
/// <param name="Place">Where a point of the house stands.</param>
internal sealed record RouteView(PaperBox Frame, Func<PointPlan, PaperPoint> Place)
{
    /// <summary>Seen from above, the plan's own upward axis up.</summary>
    public static RouteView Plan(RouteScale s, PaperBox frame)
    {
        var (left, bottom) = Corner(s, frame, s.PlanHeight);
        return new(frame, p => new(left + (p.RightM - s.LeftM) * s.MmPerMetre, bottom - (p.UpM - s.BottomM) * s.MmPerMetre));
    }

    /// <summary>Seen along the plan's upward axis, from the side of its lower edge.</summary>
    public static RouteView Elevation(RouteScale s, PaperBox frame)
    {
        var (left, bottom) = Corner(s, frame, s.ElevationHeight);
        return new(frame, p => new(left + (p.RightM - s.LeftM) * s.MmPerMetre, bottom - (p.HeightM - s.LowestM) * s.MmPerMetre));
    }

    /// <summary>Where a corner of the house stands at some height.</summary>
    public PaperPoint At(double rightM, double upM, double heightM) => Place(new("", rightM, upM, heightM, []));

    private static (double Left, double Bottom) Corner(RouteScale s, PaperBox frame, double height) =>
        (frame.Left + (frame.Width - s.Width) / 2, frame.Bottom - (frame.Height - height) / 2);
}
