using InstallPacket.Calc.Sources;
using InstallPacket.Calc.Quantities;
using InstallPacket.Calc.Reception;

namespace InstallPacket.Plans.Reception;

/// <summary>Asks the two terrain models for the field of a station, where the ground toward it is known.</summary>
internal sealed class TerrainModels(Job job, GroundView ground, Workings work, FindingList findings)
{
    private const double FewestMastM = 1;
    private static readonly Constant NinetyPercent = new("share-of-time-served", 90, "project-notes", Provenance.Derived);
    private static readonly Constant HalfPercent = new("half-of-places-and-situations", 50, "project-notes", Provenance.Derived);
    private static readonly Constant NoSpread = new("spread-at-half-of-the-places", 0, "itu-p1812", Provenance.Read);

    /// <summary>The estimates; none when the ground or the transmitter's height is unknown.</summary>
    /// <param name="a">The station as it arrives.</param>
    /// <param name="curveFadeDb">Median less 90 % of time by the curves, used where the second model cannot be mirrored.</param>
    public IEnumerable<FieldEstimate> Of(Arrival a, double curveFadeDb)
    {
        if (ground.Toward(a.Station) is not { Whole: true } path || Mast(a, path) is not { } mastM) yield break;
        if (Irregular(a, path, mastM) is { } itm) yield return itm;
        if (PathSpecific(a, path, mastM, curveFadeDb) is { } p1812) yield return p1812;
    }

    // The models want the antenna above the ground; lists give it above the sea.
    private double? Mast(Arrival a, GroundPath path)
    {
        var s = a.Station;
        if (s.AboveSeaM is not { } top)
        {
            if (a.Wanted) findings.Add(Severity.Caution, "transmitter-height-unknown", s.At, ("station", s.Id));
            return null;
        }
        var mast = top - path.HeightsM[^1];
        if (mast is >= FewestMastM and <= 3000) return mast;
        if (a.Wanted)
            findings.Add(Severity.Caution, "transmitter-below-ground", s.At, ("station", s.Id), ("top_m", top),
                ("ground_m", path.HeightsM[^1]));
        return null;
    }

    private FieldEstimate? Irregular(Arrival a, GroundPath path, double mastM)
    {
        if (a.DistanceKm * 1000 < IrregularTerrain.ShortestUsefulM) return null;
        var (f, id, height) = (a.Channel.CentreMHz, a.Station.Id, job.Siting.AntennaHeight.Value.Metres);
        var channel = ItmChannel.Of(ItmPath.Of(path.FromTransmitter(), mastM, height,
            ItmAir.AtSeaLevel(IrregularTerrain.TelevisionRefractivity)), ItmSettings.Television(f) with
            {
                Polarisation = a.Station.Polarisation == Polarisation.Vertical ? ItmPolarisation.Vertical : ItmPolarisation.Horizontal,
            });
        var (half, most, tenth) = (channel.Loss(50, 50, 50), channel.Loss(90, 50, 50), channel.Loss(10, 50, 50));
        if (most.Refusal != ItmRefusal.None) return null;
        var figures = new ModelFigure[] { new("irregularity", null, most.Terrain.DeltaHM),
            new("reference-attenuation", most.ReferenceAttenuationDb), new("free-space-loss", most.FreeSpaceLossDb) };
        var mast = work.Apply(ReceptionFormulas.AboveGround, id, a.Station.AboveSea(), Term.Ground(a.Station.Site, path.HeightsM[^1]));
        var loss = work.Apply(IrregularTerrain.LossFormula, most, id, a.Distance, a.Station.Centre(), mast, job.AntennaHeight(),
            Figure(a, "itm", "irregularity", "length_m", most.Terrain.DeltaHM),
                Figure(a, "itm", "reference-attenuation", "loss_db", most.ReferenceAttenuationDb), NinetyPercent, HalfPercent, HalfPercent);
        var service = work.Apply(FieldFromLoss.FieldFormula, id, a.ErpKw, a.Distance, loss,
            Figure(a, "itm", "free-space-loss", "loss_db", most.FreeSpaceLossDb));
        return new("itm", Field(half), service,
            most.Class switch { ItmClass.Clean => "", ItmClass.NearLimits => "an input lies near the model's limit", _ =>
                "the model itself warns that this path is dubious" })
        {
            Figures = figures, TenthDbuvM = Field(tenth), Dubious = most.Class is not (ItmClass.Clean or ItmClass.NearLimits),
        };

        double Field(in ItmResult r) => FieldFromLoss.DbuVm(a.ErpKw, a.DistanceKm, r.BasicLossDb, r.FreeSpaceLossDb);
    }

    private FieldEstimate? PathSpecific(Arrival a, GroundPath path, double mastM, double curveFadeDb)
    {
        if (path.HeightsM.Length < ZonedProfile.FewestPoints || path.LengthM < ZonedProfile.ShortestKm * 1000) return null;
        var (s, f) = (a.Station, a.Channel.CentreMHz);
        var heights = path.HeightsM.Reverse().ToArray();
        var distances = new double[heights.Length];
        for (var i = 0; i < distances.Length; i++) distances[i] = i * path.StepM / 1000;
        var prepared = new PreparedPath(new ZonedProfile(distances, heights, [], []), new PathEnd(mastM),
            new PathEnd(job.Siting.AntennaHeight.Value.Metres),
            new PathClimate(Math.Clamp((s.LatitudeDeg + job.Siting.LatitudeDeg.Value) / 2, -80, 80)));
        var mirror = TimeMirror.Of(prepared, f, s.Polarisation == Polarisation.Vertical ? WavePolarisation.Vertical
            : WavePolarisation.Horizontal);
        var median = mirror.Median;
        var tenth = mirror.Tenth;
        ModelFigure[] figures = [.. Inner("half", median), .. Inner("tenth", tenth)];
        var half = Loss(a, "half", $"{s.Id}, 50 % of time", median);
        var field = work.Apply(ReceptionFormulas.FieldByLoss, $"{s.Id}, 50 % of time", s.Centre().In(0.001), half, a.ErpKw);
        var strong = tenth.FieldDbuVm + 10 * Math.Log10(a.ErpKw);
        if (mirror.FieldDbuVm is null)
            return new("p1812", field, field - curveFadeDb,
                "90 % of time by the fading of the curves: layers or ducts forbid the mirror image") { Figures = figures, TenthDbuvM = strong };
        var most = work.Apply(TimeMirror.MirroredFormula, s.Id, half, Loss(a, "tenth", $"{s.Id}, 10 % of time", tenth));
        var service = work.Apply(ReceptionFormulas.FieldByLoss, $"{s.Id}, 90 % of time", s.Centre().In(0.001), most, a.ErpKw);
        return new("p1812", field, service, "90 % of time by the mirror image of 10 %, an estimate") { Figures = figures, TenthDbuvM = strong };
    }

    private static ModelFigure[] Inner(string time, in PathLoss loss) =>
        [new("free-path-" + time, loss.Sight.BasicDb), new("scatter-" + time, loss.ScatterDb),
            new("other-ways-" + time, loss.Blend.UnscatteredDb)];

    private Row Loss(Arrival a, string time, Subject subject, in PathLoss loss) =>
        work.Apply(PathSpecificPrediction.LossFormula, loss, subject,
        Figure(a, "p1812", "free-path-" + time, "loss_db", loss.Sight.BasicDb),
            Figure(a, "p1812", "scatter-" + time, "loss_db", loss.ScatterDb),
        Figure(a, "p1812", "other-ways-" + time, "loss_db", loss.Blend.UnscatteredDb), HalfPercent, NoSpread);

    private static Given Figure(Arrival a, string model, string name, string unit, double value) =>
        Term.Plan($"reception.stations[{a.Station.Id}].budget.estimates[{model}].figures[{name}].{unit}", value);
}
