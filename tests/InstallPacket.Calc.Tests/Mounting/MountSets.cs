using System.Globalization;
using InstallPacket.Calc.Mounting;
using InstallPacket.Calc.Tests.Checks;

namespace InstallPacket.Calc.Tests.Mounting;

/// <summary>Guys, brackets, tripods, ballast and chimneys.</summary>
public static class MountSets
{
    private const string Half = "half a unit of the last printed digit";

    // Words of the ordinances' places as the table of the packets prints them.
    private static readonly (string Code, string Place)[] Places =
        [("T01", "Woodland"), ("T02", "Cle Elum"), ("T03", "Virginia MN"), ("T04", "Red Lake Falls"), ("T05", "Pacific Grove"), ("T06", "Danville")];

    public static IReadOnlyList<ReferenceSet> All { get; } =
    [
        new()
        {
            Name = "Guys", File = "mounting/mast_check.csv", Source = "project-notes", Worth = Worth.Derived, Tolerance = Half,
            Formulas = ["guy-tension", "guy-tension-midway", "guy-compression", "guy-anchor-radius", "mast-euler"],
            Rows = 57, Comparisons = 12, RowsLeftOut = 45, LeftOutBecause = "bending and the held sixth have sets of their own", Check = Guy,
        },
        new()
        {
            Name = "Rules of US cities for guys", File = "mounting/mast_guy_rules_us_ordinances.csv", Source = "us-mast-ordinances", Worth = Worth.Published,
            Tolerance = "the words alike; the height above which guys are asked for, and the least angle, exact", Formulas = ["us-guys-needed"], Rows = 17, Comparisons = 17 + 2, Check = Ordinance,
        },
        new()
        {
            Name = "Mounts of one plate", File = "mounting/one_plate.csv", Source = "project-notes", Worth = Worth.Derived, Tolerance = Half,
            Formulas = ["plate-reach", "plate-rise", "plate-force", "plate-moment", "plate-row-pull", "plate-side-pull", "plate-turn-shear"],
            Rows = 14, Comparisons = 14, Check = Plate,
        },
        new()
        {
            Name = "Brackets, tripods, ballast, chimneys", File = "mounting/mount_check.csv", Source = "project-notes", Worth = Worth.Derived, Tolerance = Half,
            Formulas =
            [
                "mount-bolt-share", "mount-standoff-couple", "mount-along-wall", "mount-plate-bolt", "mount-tripod-one", "mount-tripod-two", "mount-tripod-thrust",
                "ballast-overturning", "ballast-sliding", "ballast-blocks", "ballast-roof-pressure", "ballast-service", "chimney-strap", "chimney-tension",
                "mast-upper-reaction", "mast-lower-reaction",
            ],
            Rows = 19, Comparisons = 17 + 3 + 2, Check = Mount,
        },
    ];

    private static Comparison[] Guy(ReferenceRow r)
    {
        var id = r.Text("id");
        if (!id.StartsWith("G-", StringComparison.Ordinal)) return [];
        switch (id)
        {
            case "G-b": return [r.Printed("value", Guys.MidwayTensionN(300, 45, 3), "N")];
            case "G-4": return [r.Printed("value", Guys.MidwayTensionN(300, 45, 4), "N")];
            case "G-e": return [r.Printed("value", Guys.EulerN(new(0.038, 0.002), 200e9, 3), "N")];
        }
        var angle = double.Parse(id[2..4], CultureInfo.InvariantCulture);
        var tension = Guys.TensionN(300, angle);
        return id[4..] switch
        {
            "" => [r.Printed("value", tension, "N")],
            "c" => [r.Printed("value", Guys.CompressionN(tension, angle), "N")],
            "r" => [r.Printed("value", Guys.AnchorRadiusM(1, angle), "m/m")],
            var other => throw new FormatException(other),
        };
    }

    private static Comparison[] Ordinance(ReferenceRow r)
    {
        var own = MastRule.UsOrdinances[r.Number - 1];
        var value = Places.Aggregate(r.Text("value"), (text, p) => text.Replace(p.Code, p.Place, StringComparison.Ordinal));
        var origin = string.Join("; ", r.Text("source").Split(' ').Select(c => Places.Single(p => p.Code == c).Place));
        List<Comparison> parts = [r.Expect("words alike", 1, (own.Rule, own.Value, own.Origin) == (r.Text("rule"), value, origin) ? 1 : 0, 1e-9, "")];
        if (value.StartsWith("10 ft", StringComparison.Ordinal))
            parts.Add(r.Expect("asked above 10 ft, not at it", 1, MastRule.UsGuysNeeded(3.0481) && !MastRule.UsGuysNeeded(3.048) ? 1 : 0, 1e-9, ""));
        if (value.StartsWith("not less than 30 deg", StringComparison.Ordinal)) parts.Add(r.Expect("least angle", 30, Guys.LeastAngleDeg, 1e-9, "deg"));
        return [.. parts];
    }

    // The inputs stand in the row as NAME=VALUE, in the order of the method.
    private static Comparison[] Plate(ReferenceRow r)
    {
        var v = r.Text("inputs").Split(' ').Where(p => p.Contains('=', StringComparison.Ordinal))
            .Select(p => double.Parse(p.Split('=')[1], CultureInfo.InvariantCulture)).ToArray();
        Calc.Sources.Formula formula = r.Text("id") switch
        {
            "OP-1" => OnePlate.ReachFormula,
            "OP-2" => OnePlate.RiseFormula,
            "OP-3" => OnePlate.ForceFormula,
            "OP-4" or "OP-5" => OnePlate.MomentFormula,
            "PC-20" or "PC-21" or "PC-22" or "OP-6" => OnePlate.RowPullFormula,
            "OP-7" or "OP-8" => OnePlate.SidePullFormula,
            "OP-9" or "OP-10" or "OP-11" => OnePlate.TurnShearFormula,
            var other => throw new FormatException(other),
        };
        return [r.Printed("value", formula.Method!(v), r.Text("unit"))];
    }

    private static Comparison[] Mount(ReferenceRow r)
    {
        var printed = r.Text("value").Split(" / ");
        var computed = Computed(r.Text("id"));
        Assert.Equal(printed.Length, computed.Length);
        return
        [
            .. printed.Select((p, i) => r.Expect($"value {i + 1}", double.Parse(p, CultureInfo.InvariantCulture), computed[i], ReferenceRow.HalfUnit(p), r.Text("unit").Split(' ')[0])),
        ];
    }

    private static double[] Computed(string id)
    {
        var mast = new MastCase([new(227, 1.8)], 41.4, 2, 0.6);
        var needed = Math.Max(BallastBase.OverturningN(386, 1.6, 0.9), BallastBase.SlidingN(386));
        var pressure = BallastBase.RoofPressurePa(200, BallastBase.Blocks(needed, 200, 15), 15, 0.9);
        return id switch
        {
            "B-1" or "B-5" => [MountReactions.BoltShareN(1129, 2)],
            "B-2" => [MountReactions.StandoffPullN(120, 0.30, 0.6)],
            "B-3" => [MountReactions.AlongWallPullN(1129, 0.30, 0.20)],
            "B-4" => [MountReactions.AlongWallPullN(1129, 0.30, 0.05)],
            "B-6" => [.. MountReactions.PlateBoltsN(300, [new(0.05, 1), new(0.15, 1), new(0.25, 1)])],
            "B-7" => [MountReactions.PlateBoltsN(300, [new(0.05, 2), new(0.25, 2)])[1]],
            "B-8" => [MountReactions.TripodOnePullN(491, 0.45, 150)],
            "B-9" => [MountReactions.TripodTwoPullN(491, 0.45, 150)],
            "B-10" => [MountReactions.TripodThrustN(491, 0.45, 150)],
            "B-11" => [BallastBase.OverturningN(386, 1.6, 0.9)],
            "B-12" => [BallastBase.SlidingN(386)],
            "B-13" => [BallastBase.Blocks(needed, 200, 15)],
            "B-14" => [pressure],
            "B-15" => [pressure / 47.88026],
            "B-16" => [BallastBase.ServiceN(231.6, 1.6, 0.9)],
            "B-17" => [ChimneyStack.StrapLegN(491, 0.6)],
            "B-18" => [ChimneyStack.FootTensionPa(491, 231.6, 0.4, 1.0, 1900) / 1e6],
            "B-19" => [MastBending.UpperReactionN(mast), MastBending.LowerReactionN(mast)],
            _ => throw new FormatException(id),
        };
    }
}
