using InstallPacket.Calc.Siting;

namespace InstallPacket.Plans.Siting.Ground;

/// <summary>What is known of the ground around the job: tiles and measured profiles. A path is sampled once, whatever asks for
/// it.</summary>
internal sealed class GroundView
{
    private readonly Job _job;
    private readonly PathSampler _sampler;
    private readonly Dictionary<(double, double), GroundPath?> _paths = [];

    public GroundView(Job job, ITerrain? terrain)
    {
        (_job, Terrain) = (job, terrain);
        _sampler = new PathSampler(job.Siting.LatitudeDeg.Value, job.Siting.LongitudeDeg.Value, terrain);
    }

    public ITerrain? Terrain { get; }

    /// <summary>The ground toward a station, or null when nothing is known of it.</summary>
    public GroundPath? Toward(Station s)
    {
        if (_paths.TryGetValue((s.LatitudeDeg, s.LongitudeDeg), out var path)) return path;
        var line = Geodesic.Inverse(_job.Siting.LatitudeDeg.Value, _job.Siting.LongitudeDeg.Value, s.LatitudeDeg, s.LongitudeDeg);
        return _paths[(s.LatitudeDeg, s.LongitudeDeg)] = MeasuredFor(s) is { } measured ? PathSampler.Measured(measured, line.DistanceM)
            : line.DistanceM < 100 ? null : _sampler.Tiles(line);
    }

    /// <summary>The measured profile toward the site of a station, or null.</summary>
    public MeasuredProfile? MeasuredFor(Station s) =>
        _job.Siting.Profiles.FirstOrDefault(p => _job.Reception.Stations.First(o => o.Id == p.Station).Site == s.Site);
}
