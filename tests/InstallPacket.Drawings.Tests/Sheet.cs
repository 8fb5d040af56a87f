namespace InstallPacket.Drawings.Tests;

/// <summary>What must hold on any sheet.</summary>
internal static class Sheet
{
    public static IEnumerable<Caption> Captions(this Drawing d) => d.Shapes.OfType<Caption>();

    public static Caption Caption(this Drawing d, string text) => d.Captions().First(c => c.Text == text);

    /// <summary>Middle of the ground that a caption covers.</summary>
    public static PaperPoint Middle(this Caption c)
    {
        var box = PaperBox.Of(c, Demo.Measure);
        return new((box.Left + box.Right) / 2, (box.Top + box.Bottom) / 2);
    }

    /// <summary>Says which captions cover each other or leave the sheet; empty when all is well.</summary>
    public static string Faults(this Drawing d)
    {
        var sheet = new PaperBox(0, 0, d.WidthMm, d.HeightMm);
        var words = d.Captions().Where(c => c.Text.Length > 0).Select(c => (c.Text, Box: PaperBox.Of(c, Demo.Measure))).ToArray();
        var faults = words.Where(w => !sheet.Holds(w.Box)).Select(w => $"'{w.Text}' leaves the sheet").ToList();
        for (var i = 0; i < words.Length; i++)
            for (var k = i + 1; k < words.Length; k++)
                if (words[i].Box.Overlaps(words[k].Box)) faults.Add($"'{words[i].Text}' covers '{words[k].Text}'");
        faults.AddRange(d.Shapes.OfType<Polyline>().SelectMany(l => l.Points).Where(p => !sheet.Holds(new(p.X, p.Y, p.X, p.Y))).Select(p => $"a line leaves the sheet at {p}").Take(3));
        return string.Join("; ", faults);
    }

    /// <summary>The widest drawn lines of an ink, closed or open.</summary>
    public static IEnumerable<Polyline> Lines(this Drawing d, Ink ink, double weight) =>
        d.Shapes.OfType<Polyline>().Where(l => l.Pen.Ink == ink && Math.Abs(l.Pen.WeightMm - weight) < 1e-9);
}
