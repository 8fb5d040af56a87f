using System.Globalization;
using InstallPacket.Calc.Quantities;

namespace InstallPacket.Jobs.Layers;

/// <summary>Heights that follow from one another when it is known where the mount is fixed: of the work, of the antenna, of the mast above.</summary>
internal static class MountForms
{
    private static readonly string[] WallPoints = ["routing", RoutingKeys.WallPoints.Name];
    private static readonly string[] Points = ["routing", RoutingKeys.Points.Name];

    /// <summary>Changes the tree.</summary>
    public static void Spell(TreeEditor tree)
    {
        if (tree.Find("mounting", MountingKeys.At.Name) is not YamlScalar at || Height(tree, at.Value) is not { } height) return;
        tree.AddIfAbsent(height, "mounting", MountingKeys.WorkHeight.Name);
        var (free, antenna) = (tree.Find("mounting", MountingKeys.FreeLength.Name), tree.Find("siting", SitingKeys.AntennaHeight.Name));
        if (antenna is null && Metres(height) is { } h && Metres(free) is { } f)
            tree.Set(Length(free!.At, h + f), "siting", SitingKeys.AntennaHeight.Name);
        else if (free is null && Metres(height) is { } low && Metres(antenna) is { } high && high > low)
            tree.Set(Length(antenna!.At, high - low), "mounting", MountingKeys.FreeLength.Name);
        Heads(tree, at);
    }

    // An antenna without a place of its own sits at the top of the mast.
    private static void Heads(TreeEditor tree, YamlScalar at)
    {
        if (tree.Find("siting", SitingKeys.AntennaHeight.Name) is not YamlScalar top
            || tree.Find("cabling", CablingKeys.Chain.Name) is not YamlMap chain) return;
        foreach (var (name, element) in chain.Entries)
        {
            if (TreeEditor.Below(element, ElementKeys.From.Name) is not null || TreeEditor.Below(element, ElementKeys.At.Name) is not null
                || element is not YamlMap) continue;
            tree.Set(new YamlScalar(name.At, name.Value, false), "cabling", CablingKeys.Chain.Name, name.Value, ElementKeys.At.Name);
            if (tree.Find([.. WallPoints, at.Value]) is YamlMap wall)
                tree.AddIfAbsent(new TreeEditor(wall).With(top, WallPointKeys.Height.Name), [.. WallPoints, name.Value]);
            else if (tree.Find([.. Points, at.Value]) is YamlList { Items: [var right, var up, _] } point)
                tree.AddIfAbsent(point with { Items = [right, up, top] }, [.. Points, name.Value]);
        }
    }

    private static YamlScalar? Height(TreeEditor tree, string point) =>
        (tree.Find([.. WallPoints, point, WallPointKeys.Height.Name])
            ?? (tree.Find([.. Points, point]) as YamlList is { Items: [_, _, var height] } ? height : null)) as YamlScalar;

    private static double? Metres(YamlNode? node) => node is YamlScalar text && UnitText.Read(text.Value, Dimension.Length) is
        { Problem: UnitProblem.None } reading ? reading.Value : null;

    private static YamlScalar Length(SourceSpan at, double metres) =>
        new(at, metres.ToString("0.####", CultureInfo.InvariantCulture) + " m", false);
}
