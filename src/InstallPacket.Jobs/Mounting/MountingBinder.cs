using InstallPacket.Calc.Quantities;

namespace InstallPacket.Jobs.Mounting;

/// <summary>Turns the checked group <c>mounting</c> into its record.</summary>
internal sealed class MountingBinder(PartLibrary parts)
{
    public MountingSection Section(CheckedGroup g) => Section(g, parts.Get<MountPart>(g.Get(MountingKeys.Part)));

    private MountingSection Section(CheckedGroup g, MountPart mount) => new(
        g.Get(MountingKeys.Kind), mount, g.Maybe(MountingKeys.Mast) is { } mast ? parts.Get<MastPart>(mast.Value) : mount.OwnMast!,
        g.MaybeMetres(MountingKeys.MastLength)?.Value ?? Length.FromMetres(mount.OwnMast!.LengthM!.Value), g.Metres(MountingKeys.FreeLength), g.Get(MountingKeys.On),
        [.. g.Items(MountingKeys.Fixings).Select(f => Fixing(f.Value, g.Get(MountingKeys.Existing)))], g.Maybe(MountingKeys.RoofPitch)?.Value,
            g.Metres(MountingKeys.WorkHeight),
        g.Get(MountingKeys.Access), g.At)
    {
        FreeLengthAt = g.Place(MountingKeys.FreeLength),
        Existing = g.Get(MountingKeys.Existing),
        Spacing = g.MaybeMetres(MountingKeys.Spacing)?.Value,
        SpacingAt = g.Place(MountingKeys.Spacing),
        Plate = g.Maybe(MountingKeys.Plate) is { } plate
            ? new HolePattern(plate.Value.Maybe(PlateKeys.Width)?.Value ?? 0, plate.Value.Get(PlateKeys.Height)) : null,
        Wind = g.Maybe(MountingKeys.Wind) is { } wind ? Wind(wind.Value) : null,
        Guys = g.Maybe(MountingKeys.Guys) is { } guys ? Guys(guys.Value) : null,
        Ballast = g.Maybe(MountingKeys.Ballast) is { } ballast ? Ballast(ballast.Value) : null,
        Chimney = g.Maybe(MountingKeys.Chimney) is { } chimney ? Chimney(chimney.Value) : null,
        Survey = g.Maybe(MountingKeys.Survey) is { } survey && g.Wrote(MountingKeys.Survey) ? Survey(survey.Value) : null,
        LadderLoadKg = g.Maybe(MountingKeys.LadderLoad),
        FallProtection = g.Maybe(MountingKeys.FallProtection),
    };

    private Fixing Fixing(CheckedGroup g, bool onOldMount) => Fixing(g, parts.Get<FixingPart>(g.Get(FixingKeys.Part)), onOldMount);

    private static Fixing Fixing(CheckedGroup g, FixingPart part, bool onOldMount) => new(
        part, g.Get(FixingKeys.Count), g.MaybeMetres(FixingKeys.Pilot)?.Value, g.Get(FixingKeys.Into), g.At)
    {
        Existing = g.Maybe(FixingKeys.Existing)?.Value ?? (onOldMount && part.Role != PartRole.AntennaClamp),
        Timber = g.Maybe(FixingKeys.Timber),
        Wet = g.Get(FixingKeys.Wet),
        GapM = g.Get(FixingKeys.Gap),
        EndM = g.Maybe(FixingKeys.EndDistance),
        EdgeM = g.Maybe(FixingKeys.EdgeDistance),
        PullN = g.Maybe(FixingKeys.Pull)?.Value,
        ShearN = g.Maybe(FixingKeys.Shear)?.Value,
        Stated = g.Maybe(FixingKeys.Stated)?.Value,
        PilotAt = g.Place(FixingKeys.Pilot),
    };

    private static DesignWind Wind(CheckedGroup g) => new(g.Get(WindKeys.Speed), g.Placed(WindKeys.Exposure), g.Get(WindKeys.Crest), g.At);

    private GuySection Guys(CheckedGroup g) => new(
        parts.Get<GuyPart>(g.Get(GuysKeys.Part)), g.Get(GuysKeys.Pretension),
        [.. g.Items(GuysKeys.Sets).Select(s =>
            new GuySet(s.Value.Get(GuySetKeys.Ring), s.Value.Get(GuySetKeys.Count), s.Value.Get(GuySetKeys.AnchorRadius), s.At))],
        g.Get(GuysKeys.Anchor), g.Maybe(GuysKeys.AnchorPull)?.Value, g.Maybe(GuysKeys.Stated)?.Value, g.At);

    private static BallastSection Ballast(CheckedGroup g) => new(
        g.Get(BallastKeys.Side), g.Get(BallastKeys.Block), g.Maybe(BallastKeys.Blocks)?.Value, g.Maybe(BallastKeys.Friction)?.Value,
        g.Maybe(BallastKeys.RoofBears)?.Value, g.Maybe(BallastKeys.Stated)?.Value, g.At);

    private static ChimneySection Chimney(CheckedGroup g) => new(
        g.Get(ChimneyKeys.Side), g.Get(ChimneyKeys.Height), g.Get(ChimneyKeys.StrapSpacing), g.Placed(ChimneyKeys.State),
            g.Placed(ChimneyKeys.Allowed), g.At);

    private static SurveySection Survey(CheckedGroup g) => new(
        g.Get(SurveyKeys.Roof), g.Get(SurveyKeys.Asbestos), g.Get(SurveyKeys.Behind), g.Get(SurveyKeys.Buried), g.Get(SurveyKeys.OldMast),
            g.At);
}
