using InstallPacket.Calc.Reception;

namespace InstallPacket.Bench;

/// <summary>The prediction over a 100 km profile: what a path costs, and what each of its channels costs after that.</summary>
internal static class P1812Bench
{
    private const int Channels = 36;

    /// <summary>Hands each measurement to the program's own clock.</summary>
    public static void Run(Action<string, int, Func<object?>> measure)
    {
        foreach (var points in (int[])[501, 1001])
        {
            var profile = Hills(points);
            var path = Prepare(profile);
            measure($"P.1812 path, 100 km, {points} points", 20_000, () => Prepare(profile));
            measure($"P.1812 path and one channel, {points}", 20_000, () => PathSpecificPrediction.Loss(Prepare(profile), new(605, 50)));
            measure($"P.1812 {Channels} channels of it, {points}", 20_000, () => Sum(path));
        }
    }

    private static double Sum(PreparedPath path)
    {
        double sum = 0;
        for (var channel = 0; channel < Channels; channel++) sum += PathSpecificPrediction.Loss(path, new(473 + 6 * channel, 50)).LossDb;
        return sum;
    }

    private static PreparedPath Prepare(ZonedProfile profile) => new(profile, new(150), new(9.1), new(43));

    // Rolling country with trees, some of it above the ray.
    private static ZonedProfile Hills(int points)
    {
        double[] km = [.. Enumerable.Range(0, points).Select(i => 100.0 * i / (points - 1))];
        return new(km, [.. km.Select(d => 300 + 60 * Math.Sin(d / 3) + 40 * Math.Sin(d / 0.7))], [.. km.Select(d => Math.Sin(d) > 0 ? 15.0 : 0)], []);
    }
}
