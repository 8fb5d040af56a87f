using InstallPacket.Plans;

namespace InstallPacket.Drawings.Mounting.Access;

/// <summary>Ladder, mast and wires in a view from the side; the mast stands at nought, the ground at height nought.</summary>
/// <param name="Side">Scale and place.</param>
/// <param name="WallM">Where the ladder leans.</param>
/// <param name="FootM">Height of the mast's foot.</param>
/// <param name="TopM">Height of the antenna.</param>
/// <param name="HeightMm">Height of the scene on the sheet.</param>
internal sealed record AccessView(SideView Side, double WallM, double FootM, double TopM, double HeightMm)
{
    // How wide the house is does not matter here: a piece of it is drawn.
    private const double HouseM = 3;

    public static AccessView Of(SheetPlan plan, PaperBox box)
    {
        var m = plan.Mounting;
        var top = plan.Siting.AntennaHeightM;
        var foot = Math.Max(0, top - m.MastLengthM);
        var wall = m.Ladder is null ? 0 : -HouseM;
        var left = Math.Min(wall - (m.Ladder?.FootM ?? 0) - 1, -1);
        var right = m.PowerLines.Select(l => Math.Max(l.DistanceM + l.KeepClearM, l.RequiredM) + 1).Append(2).Max();
        // Room above for the sign of the antenna and the numbers of the wires.
        var side = SideView.Fit(box with { Top = box.Top + 7 }, left, 0, right,
            m.PowerLines.Select(l => l.HeightM + l.KeepClearM).Append(m.WorkHeightM + 1.2).Append(top).Max());
        return new(side, wall, foot, top, 7
            + side.MmPerMetre * m.PowerLines.Select(l => l.HeightM + l.KeepClearM).Append(m.WorkHeightM + 1.2).Append(top).Max());
    }
}
