using System.Globalization;
using System.Text.RegularExpressions;
using InstallPacket.Calc.Quantities;

namespace InstallPacket.Jobs.Layers;

/// <summary>Spells out a house that is a box, and places that are said in words.</summary>
/// <param name="findings">Receives what cannot be spelled out.</param>
internal sealed partial class HouseForms(FindingList findings)
{
    private const string Section = "routing";
    private static readonly string[] Sides = ["north", "east", "south", "west", "front", "back", "left", "right"];
    private static readonly string[] SomePoint = ["0 m", "0 m", "3 m"];

    /// <summary>Puts footprint, plan direction and wall points into the tree.</summary>
    public void Spell(TreeEditor tree)
    {
        var front = Box(tree);
        if (tree.Find(Section, RoutingKeys.Places.Name) is not YamlMap places) return;
        var walls = WallsOf(tree);
        foreach (var (name, node) in places.Entries)
        {
            if (node is not YamlScalar words) continue;
            tree.Remove(Section, RoutingKeys.Places.Name, name.Value);
            if (Point(words, walls, front, tree) is { } point) tree.AddIfAbsent(point, Section, RoutingKeys.WallPoints.Name, name.Value);
            else tree.AddIfAbsent(Anywhere(words), Section, RoutingKeys.Points.Name, name.Value);
        }
        if (tree.Find(Section, RoutingKeys.Places.Name) is YamlMap { Entries.Count: 0 }) tree.Remove(Section, RoutingKeys.Places.Name);
    }

    // A place that cannot be read is told itself; whatever stands there is not told again.
    private static YamlList Anywhere(YamlScalar words) =>
        new(words.At, [.. SomePoint.Select(v => words with { Value = v, Quoted = false })]);

    // The front lies along the lower edge of the plan, so that the plan is read as one walks up to the house.
    private static double? Box(TreeEditor tree)
    {
        if (tree.Find(Section, RoutingKeys.House.Name) is not YamlMap house) return null;
        var front = Direction(TreeEditor.Below(house, HouseKeys.Front.Name));
        if (front is { } bearing)
        {
            var said = (YamlScalar)TreeEditor.Below(house, HouseKeys.Front.Name)!;
            tree.AddIfAbsent(said with { Quoted = false, Value = Text((bearing + 180) % 360) + North(said) }, Section, RoutingKeys.PlanUp.Name);
            tree.Remove(Section, RoutingKeys.House.Name, HouseKeys.Front.Name);
        }
        // A front that cannot be read is told itself.
        else if (TreeEditor.Below(house, HouseKeys.Front.Name) is YamlScalar unread)
            tree.AddIfAbsent(unread with { Quoted = false, Value = "0 deg true" }, Section, RoutingKeys.PlanUp.Name);
        if (TreeEditor.Below(house, HouseKeys.Width.Name) is not YamlScalar width
            || TreeEditor.Below(house, HouseKeys.BoxDepth.Name) is not YamlScalar depth) return front;
        tree.Remove(Section, RoutingKeys.House.Name, HouseKeys.Width.Name);
        tree.Remove(Section, RoutingKeys.House.Name, HouseKeys.BoxDepth.Name);
        var zero = new YamlScalar(width.At, "0 m", false);
        tree.AddIfAbsent(new YamlList(width.At, [.. new[] { (zero, zero), (width, zero), (width, depth), (zero, depth) }
            .Select(c => new YamlList(c.Item1.At, [c.Item1, c.Item2]))]), Section, RoutingKeys.House.Name, HouseKeys.Footprint.Name);
        return front;
    }

    private YamlMap? Point(YamlScalar words, HouseWalls? walls, double? front, TreeEditor tree)
    {
        var form = Form().Match(words.Value);
        if (!form.Success) return Unclear(words, "form");
        if (walls is null) return Unclear(words, "no-house");
        // Nobody knows which wall looks where.
        if (tree.Find(Section, RoutingKeys.House.Name, HouseKeys.Front.Name) is not null) return null;
        double Bearing(string side) => Array.IndexOf(Sides, side) is var at && at < 4 ? at * 90
            : (front ?? walls.PlanUpDeg + 180) + (side switch { "front" => 0, "back" => 180, "left" => 90, _ => 270 });
        var height = form.Groups["height"].Success ? words with { Value = form.Groups["height"].Value, Quoted = false }
            : tree.Find(Section, RoutingKeys.House.Name, form.Groups["edge"].Value == "ridge" ? HouseKeys.Ridge.Name : HouseKeys.Eaves.Name);
        if (height is null) return Unclear(words, "no-height");
        if (Wall(form, walls, Bearing) is not { } wall) return Unclear(words, "wall");
        double along;
        if (!form.Groups["along"].Success) along = wall.LengthM / 2;
        else
        {
            var reading = UnitText.Read(form.Groups["along"].Value, Dimension.Length);
            if (reading.Problem != UnitProblem.None) return Unclear(words, "form");
            var fromStart = form.Groups["end"].Success ? wall.StartsLeft == (form.Groups["end"].Value == "left")
                : wall.StartsAt(Bearing(form.Groups["corner"].Value));
            if (fromStart is null) return Unclear(words, "corner");
            along = fromStart.Value ? reading.Value : wall.LengthM - reading.Value;
        }
        YamlScalar Value(string text) => words with { Value = text, Quoted = false };
        return new(words.At, [new(Value("wall"), Value(Text(wall.Number))), new(Value("along"), Value(Text(along) + " m")),
            new(Value("height"), height)]) { Named = words.At };
    }

    private static HouseWall? Wall(Match form, HouseWalls walls, Func<string, double> bearing) => form.Groups["number"].Success
        ? walls.Numbered(int.Parse(form.Groups["number"].Value, CultureInfo.InvariantCulture)) : walls.Facing(bearing(form.Groups["side"].Value));

    private YamlMap? Unclear(YamlScalar words, string way)
    {
        findings.Add(Severity.Stop, "place-unclear", way, words.At, ("written", words.Value), ("sides", Sides));
        return null;
    }

    private static HouseWalls? WallsOf(TreeEditor tree)
    {
        if (Direction(tree.Find(Section, RoutingKeys.PlanUp.Name)) is not { } up
            || tree.Find(Section, RoutingKeys.House.Name, HouseKeys.Footprint.Name) is not YamlList footprint) return null;
        var corners = new List<(double, double)>();
        foreach (var item in footprint.Items)
        {
            if (item is not YamlList { Items: [YamlScalar right, YamlScalar back] }) return null;
            var (x, y) = (UnitText.Read(right.Value, Dimension.Length), UnitText.Read(back.Value, Dimension.Length));
            if (x.Problem != UnitProblem.None || y.Problem != UnitProblem.None) return null;
            corners.Add((x.Value, y.Value));
        }
        return corners.Count < 3 ? null : new(corners, up);
    }

    private static double? Direction(YamlNode? node) => node is YamlScalar text && Jobs.Text.Direction.Bearing(text.Value) is Bearing bearing
        ? bearing.Degrees : null;

    // A compass bearing stays one, so that the reader can refuse it.
    private static string North(YamlScalar bearing) => Jobs.Text.Direction.Bearing(bearing.Value) is Bearing { North: Calc.Quantities.North.Magnetic }
        ? " deg magnetic" : " deg true";

    private static string Text(double value) => value.ToString("0.######", CultureInfo.InvariantCulture);

    private const string Side = "north|east|south|west|front|back|left|right";

    [GeneratedRegex($"^((?<side>{Side}) (wall|gable)|wall (?<number>[0-9]{{1,2}}))"
        + $"(, (?<along>[^,]+?) from (the (?<corner>{Side}) corner|its (?<end>left|right) end))?, "
        + "(at the (?<edge>eaves|eave|ridge)|(?<height>[^,]+?) up)$")]
    private static partial Regex Form();
}
