namespace InstallPacket.Plans.Routing;

/// <summary>Whether the description of the house holds together.</summary>
internal sealed class HouseRules(FindingList findings)
{
    /// <summary>Reports what is wrong; false when nothing can be judged against this house.</summary>
    public bool Sound(House house)
    {
        var shape = new HouseShape(house);
        var sound = true;
        if (shape.Crossing() is { } c)
        {
            sound = false;
            findings.Add(Severity.Stop, "footprint-crossed", house.FootprintAt, ("first", c.First), ("second", c.Second),
                ("right_m", c.RightM),
                ("up_m", c.UpM));
        }
        if (house.Ridge.Metres < house.Eaves.Metres)
        {
            sound = false;
            findings.Add(Severity.Stop, "ridge-below-eaves", house.RidgeAt, ("ridge_m", house.Ridge.Metres),
                ("eaves_m", house.Eaves.Metres));
        }
        if (!sound) return false;
        foreach (var room in house.Rooms)
            if (room.Corners.Select(k => shape.BeyondM(k.Right, k.Up)).Max() is var beyond && beyond > InsideRules.ToleranceM)
                findings.Add(Severity.Caution, "room-outside-house", room.At, ("room", room.Name), ("by_m", beyond));
        return true;
    }
}
