using InstallPacket.Plans;

namespace InstallPacket.Drawings.Reception.Aim;

/// <summary>Draws the graduated rings.</summary>
internal static class RingPainter
{
    public static void Draw(SheetCanvas canvas, RingGeometry ring, double? declinationDeg)
    {
        Graduate(canvas, ring, new(ring.Outer, RingGeometry.TickMm, ring.Outer - RingGeometry.BandMm / 2, 0, Strong: true));
        if (ring.Compass && declinationDeg is { } turn)
        {
            canvas.Ring(ring.Centre, ring.Outer - RingGeometry.BandMm, new(Ink.Faint, 0.15));
            Graduate(canvas, ring, new(ring.Field, -RingGeometry.TickMm, ring.Field + RingGeometry.BandMm / 2, turn, Strong: false));
        }
        else canvas.Ring(ring.Centre, ring.Field, new(Ink.Faint, 0.2));
    }

    /// <summary>The headings at which nothing is lost: a band under the true degrees, and a heavy rim that also reads in grey and leaves
    /// the numbers free.</summary>
    public static void Arc(SheetCanvas canvas, RingGeometry ring, AimArc arc)
    {
        var (inner, rim) = (ring.Outer - RingGeometry.BandMm, ring.Outer + 0.8);
        canvas.Area(new(Ink.Accent, 0), Fill.Tint,
            [.. Polar.Arc(ring.Centre, ring.Outer, arc.FromDeg, arc.WidthDeg),
            .. Polar.Arc(ring.Centre, inner, arc.FromDeg, arc.WidthDeg).Reverse()]);
        canvas.Line(new(Ink.Accent, 1.4), Polar.Arc(ring.Centre, rim, arc.FromDeg, arc.WidthDeg));
    }

    private sealed record Circle(double Radius, double Tick, double Numbers, double ZeroDeg, bool Strong);

    // The compass ring is the same ring turned: its zero lies at the true bearing that equals the declination.
    private static void Graduate(SheetCanvas canvas, RingGeometry ring, Circle circle)
    {
        var ink = circle.Strong ? Ink.Line : Ink.Faint;
        canvas.Ring(ring.Centre, circle.Radius, new(ink, circle.Strong ? 0.5 : 0.25));
        for (var deg = 0; deg < 360; deg += 10)
        {
            var named = deg % 30 == 0;
            var at = deg + circle.ZeroDeg;
            canvas.Line(new(ink, named ? 0.5 : 0.25), ring.At(at, circle.Radius),
                ring.At(at, circle.Radius + circle.Tick * (named ? 1 : 0.65)));
            if (named) canvas.Centred(ring.At(at, circle.Numbers), UnitPrinter.Plain.Bearing(deg).TrimEnd('°'), circle.Strong ? 3.2 : 3,
                circle.Strong, ink);
        }
    }
}
