using InstallPacket.Plans;

namespace InstallPacket.Drawings;

/// <summary>Draws the graduated rings.</summary>
internal static class RingPainter
{
    public static void Draw(SheetCanvas canvas, RingGeometry ring, double? declinationDeg)
    {
        Graduate(canvas, ring, ring.Outer, 0, strong: true);
        if (ring.Compass && declinationDeg is { } turn) Graduate(canvas, ring, ring.Magnetic, turn, strong: false);
        canvas.Ring(ring.Centre, ring.Field, new(Ink.Faint, 0.2));
    }

    // The compass ring is the same ring turned: its zero lies at the true bearing that equals the declination.
    private static void Graduate(SheetCanvas canvas, RingGeometry ring, double radius, double zeroDeg, bool strong)
    {
        var ink = strong ? Ink.Line : Ink.Faint;
        canvas.Ring(ring.Centre, radius, new(ink, strong ? 0.5 : 0.25));
        for (var deg = 0; deg < 360; deg += 10)
        {
            var named = deg % 30 == 0;
            canvas.Line(new(ink, named ? 0.5 : 0.25), ring.At(deg + zeroDeg, radius), ring.At(deg + zeroDeg, radius - (named ? 1.7 : 1.1)));
            if (named) canvas.Centred(ring.At(deg + zeroDeg, radius - 4.1), UnitPrinter.Bearing(deg).TrimEnd('°'), strong ? 3.2 : 3, strong, ink);
        }
    }
}
