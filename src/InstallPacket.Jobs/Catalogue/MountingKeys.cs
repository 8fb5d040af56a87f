using InstallPacket.Calc.Quantities;

namespace InstallPacket.Jobs.Catalogue;

/// <summary>The keys of <c>mounting</c>.</summary>
internal static class MountingKeys
{
    private static readonly GroupKind Fixing = new(
        new("part", new ReferenceKind(ReferenceTarget.Part, "fixing"), "The fixing.", Required: true),
        new("count", new IntegerKind(1, 200), "How many.", Required: true),
        new("pilot", new QuantityKind(Dimension.Length, 0, 0.03, "m"), "Diameter of the pilot hole."),
        new("into", new TextKind(80), "What it bites into.", Required: true));

    private static readonly GroupKind Wind = new(
        new("speed", new QuantityKind(Dimension.Speed, 5, 120, "m/s"), "Basic wind speed of the place from the official map: the 3-second gust of ASCE 7 for `us`, the 10-minute mean of EN 1991-1-4 for `eu`. Nothing is guessed.", Required: true),
        new("exposure", new WordKind("B", "C", "D", "0", "I", "II", "III", "IV"), "What the wind blows over: B town or woodland, C open, D water front for `us`; 0 sea, I lake, II farmland, III village, IV city for `eu`.", Required: true),
        new("crest", new WordKind("no", "yes"), "Whether the house stands on a crest, a ridge or a cliff, where the wind is stronger than on flat ground.", Default: "no"));

    public static readonly GroupKind Section = new(
        new("kind", new WordKind("gable-bracket", "wall-bracket", "eave-bracket", "ground-mast", "chimney-lashing", "tripod", "ballast", "attic"),
            "How the antenna is held.", Required: true),
        new("part", new ReferenceKind(ReferenceTarget.Part, "mount"), "The bracket or base.", Required: true),
        new("mast", new ReferenceKind(ReferenceTarget.Part, "mast"), "The mast tube.", Required: true),
        new("mast-length", new QuantityKind(Dimension.Length, 0.2, 30, "m"), "Length of the mast tube.", Required: true),
        new("free-length", new QuantityKind(Dimension.Length, 0.1, 20, "m"), "Length of mast above its upper support.", Required: true),
        new("on", new TextKind(120), "What it is fixed to.", Required: true),
        new("fixings", new ListKind(Fixing, 1, 20), "The fixings.", Required: true),
        new("spacing", new QuantityKind(Dimension.Length, 0.05, 10, "m"), "Distance between the two supports of the mast; the held length when absent."),
        new("wind", Wind, "The wind that the mast must stand; without it nothing is said about its strength."),
        new("roof-pitch", new QuantityKind(Dimension.Angle, 0, 80, "deg"), "Pitch of the roof, when somebody walks on it."),
        new("work-height", new QuantityKind(Dimension.Length, 0, 100, "m"), "Height at which the ladder leans or the person stands.", Required: true),
        new("access", new WordKind("ladder", "ladder-and-roof", "tower", "platform", "inside"), "How the place is reached.", Required: true));
}
