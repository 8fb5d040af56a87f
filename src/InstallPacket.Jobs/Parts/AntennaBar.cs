using InstallPacket.Calc.Quantities;

namespace InstallPacket.Jobs.Parts;

/// <summary>A bar of an antenna's outline.</summary>
public sealed record AntennaBar
{
    internal AntennaBar(CheckedGroup g)
    {
        Count = g.Get(BarKeys.Count);
        WidthM = g.Get(BarKeys.Width);
        LengthM = g.Get(BarKeys.Length);
        Form = g.Get(BarKeys.Form);
        Faces = g.Get(BarKeys.Faces);
    }

    /// <summary>How many alike.</summary>
    public int Count { get; init; }

    /// <summary>What the wind sees of its thickness [m].</summary>
    public double WidthM { get; init; }

    /// <summary>Its length [m].</summary>
    public double LengthM { get; init; }

    /// <summary>Its cross-section.</summary>
    public BarForm Form { get; init; }

    /// <summary>Which wind meets it.</summary>
    public BarFace Faces { get; init; }
}

/// <summary>The keys of a bar.</summary>
internal static class BarKeys
{
    private static readonly KeyList Keys = new();

    public static readonly Key<int> Count = Keys.Required("count", new IntegerKind(1, 200), "How many alike.");

    public static readonly Key<double> Width = Keys.Required(
        "width", new QuantityKind(Dimension.Length, 0.001, 1, "m"), "What the wind sees of its thickness.");

    public static readonly Key<double> Length = Keys.Required("length", new QuantityKind(Dimension.Length, 0.01, 10, "m"),
        "How long it is.");

    public static readonly Key<BarForm> Form = Keys.Default("form", new WordKind<BarForm>(), "Its cross-section.", "round");

    public static readonly Key<BarFace> Faces = Keys.Required(
        "faces", new WordKind<BarFace>(), "Whether wind along the boom or across it meets it.");

    public static GroupKind Group => Keys.Group;
}
