namespace InstallPacket.Plans.Routing;

/// <summary>The sides of the plan, from which the house can be looked at.</summary>
public static class PlanSide
{
    internal static readonly string[] Others = ["right", "upper", "left"];

    /// <summary>A place as somebody sees it who looks at this side: to the right, and away from the viewer.</summary>
    /// <param name="side"><c>lower</c>, <c>right</c>, <c>upper</c> or <c>left</c>.</param>
    /// <param name="rightM">To the right on the plan.</param>
    /// <param name="upM">Up on the plan.</param>
    public static (double RightM, double AwayM) Seen(string side, double rightM, double upM) => side switch
    {
        "right" => (upM, -rightM),
        "upper" => (-rightM, -upM),
        "left" => (-upM, rightM),
        _ => (rightM, upM),
    };

    /// <summary>The bearing of the side as seen from the house [deg].</summary>
    public static double BearingDeg(string side, double planUpDeg) =>
        (planUpDeg + side switch { "right" => 90, "upper" => 0, "left" => 270, _ => 180 }) % 360;

    // A leg lies on a side when both its ends are on the face of the house there or in front of it.
    internal static bool RunsOn(RoutingSection routing, Run run, string side)
    {
        var face = routing.House!.Footprint.Min(c => Seen(side, c.Right, c.Up).AwayM) + HouseShape.FaceM;
        bool InFront(HousePoint p) => Seen(side, p.RightM, p.UpM).AwayM <= face;
        return RunLeg.Of(routing, run).Any(l => !l.Indoors && InFront(l.From) && InFront(l.To));
    }
}
