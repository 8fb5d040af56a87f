namespace InstallPacket.Drawings.Marks;

/// <summary>A view from the side at one scale: metres to the right and up become millimetres on the sheet.</summary>
/// <param name="MmPerMetre">The scale.</param>
/// <param name="Origin">Where nought stands.</param>
internal sealed record SideView(double MmPerMetre, PaperPoint Origin)
{
    /// <summary>A view that shows a rectangle of the world, standing on the lower edge of a box and in the middle of it.</summary>
    public static SideView Fit(PaperBox box, double leftM, double bottomM, double rightM, double topM)
    {
        var scale = Math.Min(box.Width / Math.Max(0.5, rightM - leftM), box.Height / Math.Max(0.5, topM - bottomM));
        var spare = (box.Width - (rightM - leftM) * scale) / 2;
        return new(scale, new(box.Left + spare - leftM * scale, box.Bottom + bottomM * scale));
    }

    public PaperPoint At(double rightM, double upM) => new(Origin.X + rightM * MmPerMetre, Origin.Y - upM * MmPerMetre);

    public double X(double rightM) => Origin.X + rightM * MmPerMetre;

    public double Y(double upM) => Origin.Y - upM * MmPerMetre;
}
