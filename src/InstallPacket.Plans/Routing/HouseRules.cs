namespace InstallPacket.Plans.Routing;

/// <summary>Whether the description of the house holds together.</summary>
internal sealed class HouseRules(Job job, FindingList findings)
{
    private readonly UnitPrinter _print = UnitPrinter.Of(job);

    /// <summary>Reports what is wrong; false when nothing can be judged against this house.</summary>
    public bool Sound(House house)
    {
        var shape = new HouseShape(house);
        var sound = true;
        if (shape.Crossing() is { } c)
        {
            sound = false;
            findings.Add(Severity.Stop, "footprint-crossed", house.FootprintAt, $"walls {c.First} and {c.Second} of the footprint cross at {_print.Length(c.RightM)} right, {_print.Length(c.UpM)} up",
                "the corners go around the house once, without a crossing", "put the corners in the order in which you walk around the house");
        }
        if (house.Ridge.Metres < house.Eaves.Metres)
        {
            sound = false;
            findings.Add(Severity.Stop, "ridge-below-eaves", house.RidgeAt, $"the ridge is {_print.Length(house.Ridge.Metres)} above the ground and the eaves {_print.Length(house.Eaves.Metres)}",
                "the ridge is at least as high as the eaves", "correct one of the heights; for a flat roof write the same twice and `roof: flat`");
        }
        if (!sound) return false;
        foreach (var room in house.Rooms)
            if (room.Corners.Select(k => shape.BeyondM(k.Right, k.Up)).Max() is var beyond && beyond > InsideRules.ToleranceM)
                findings.Add(Severity.Caution, "room-outside-house", room.At, $"a corner of the room `{room.Name}` lies {_print.Length(beyond)} outside the footprint", "rooms lie within the footprint", "correct the corners of the room or of the house");
        return true;
    }
}
