namespace InstallPacket.Drawings.Reception.Aim;

/// <summary>What a mark on the ring is.</summary>
internal enum PinKind
{
    /// <summary>The aim of the antenna.</summary>
    Aim,

    /// <summary>An end of the arc of headings at which nothing is lost.</summary>
    ArcEnd,

    /// <summary>The aim of a second antenna.</summary>
    SecondAim,

    /// <summary>A transmitter site with a wanted station.</summary>
    WantedSite,

    /// <summary>Another transmitter site.</summary>
    OtherSite,

    /// <summary>A mark to aim by.</summary>
    Landmark,

    /// <summary>Something in the way.</summary>
    Obstruction,
}

/// <summary>A mark on the ring and what its label says.</summary>
/// <param name="Kind">What it is.</param>
/// <param name="BearingDeg">Its true bearing.</param>
/// <param name="Sign">Number in the mark; empty for none.</param>
/// <param name="Name">Name; empty for a mark without label.</param>
/// <param name="Facts">Distance, bearing and the like, a line each.</param>
internal sealed record RingPin(PinKind Kind, double BearingDeg, string Sign, string Name, IReadOnlyList<string> Facts)
{
    /// <summary>
    /// The bearings at which the marks stand so that none covers another, in the order of the pins; each stays as near to its own
    /// bearing as its neighbours let it.
    /// </summary>
    public static double[] Spread(IReadOnlyList<RingPin> pins, double leastDeg)
    {
        var least = Math.Min(leastDeg, 350.0 / Math.Max(1, pins.Count));
        var order = Enumerable.Range(0, pins.Count).OrderBy(i => pins[i].BearingDeg).ThenBy(i => i).ToArray();
        var deg = order.Select(i => pins[i].BearingDeg).ToArray();
        // Neighbours push each other apart by half of what is missing; on a ring the last one also meets the first.
        for (var round = 0; round < 2000; round++)
        {
            var moved = 0.0;
            for (var i = 0; i < deg.Length && deg.Length > 1; i++)
            {
                var next = (i + 1) % deg.Length;
                var missing = least - (deg[next] + (next == 0 ? 360 : 0) - deg[i]);
                if (missing <= 1e-9) continue;
                deg[i] -= missing / 2;
                deg[next] += missing / 2;
                moved = Math.Max(moved, missing);
            }
            if (moved < 1e-6) break;
        }
        var result = new double[pins.Count];
        for (var k = 0; k < order.Length; k++) result[order[k]] = deg[k];
        return result;
    }
}
