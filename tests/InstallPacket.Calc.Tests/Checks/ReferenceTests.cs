using System.Globalization;
using InstallPacket.Calc.Tests.Reception;

namespace InstallPacket.Calc.Tests.Checks;

public class ReferenceTests
{
    public static TheoryData<string> Names => [.. ReferenceSets.All.Select(s => s.Name)];

    [Theory, MemberData(nameof(Names))]
    public void Every_row_is_met_within_its_tolerance(string name)
    {
        var set = Set(name);
        var failures = set.Run().SelectMany(r => r.Results).Where(c => !c.Holds)
            .Select(c => string.Create(CultureInfo.InvariantCulture,
                $"{set.File}, {c.Label}: expected {c.Expected:R}, computed {c.Computed:R}, off by {c.Deviation:G3} {c.Unit}, allowed {c.Tolerance:G3}"))
            .ToArray();
        Assert.True(failures.Length == 0, $"{failures.Length} out of tolerance\n{string.Join('\n', failures.Take(40))}");
    }

    [Theory, MemberData(nameof(Names))]
    public void No_row_is_skipped_in_silence(string name)
    {
        var set = Set(name);
        var results = set.Run();
        Assert.True(set.Rows > 0 && set.Comparisons > 0);
        Assert.Equal(
            (set.Rows, set.Comparisons, set.RowsLeftOut),
            (results.Count, results.Sum(r => r.Results.Length), results.Count(r => r.Results.Length == 0)));
        Assert.Equal(set.RowsLeftOut > 0, set.LeftOutBecause.Length > 0);
    }

    [Fact]
    public void Every_reference_file_is_used_by_a_set()
    {
        var root = Path.Combine(AppContext.BaseDirectory, "Reference");
        var files = Directory.EnumerateFiles(root, "*.csv", SearchOption.AllDirectories)
            .Select(f => Path.GetRelativePath(root, f).Replace('\\', '/'));
        // Tables that a set reads beside its own file; the American bonding rules are data of the code family and compared in the tests of the planners.
        string[] inputs = ["bonding/bonding_rules_us.csv", "materials/cutting_instance_items.csv", "siting/igrf14-2025-coefficients.csv", "cabling/coax_attenuation_max.csv", "cabling/coax_fit.csv", "cabling/inserter_budget_circuits.csv", "reception/p1546_without_angle.csv", .. ItmProfiles.Files, .. P1812Inputs.Files];
        Assert.Empty(files.Except(ReferenceSets.All.Select(s => s.File)).Except(inputs));
    }

    [Fact]
    public void Half_a_unit_follows_the_printed_digits()
    {
        Assert.Equal(0.005, ReferenceRow.HalfUnit("12.34"), 1e-8);
        Assert.Equal(0.5, ReferenceRow.HalfUnit("109"), 1e-6);
        Assert.Equal(50, ReferenceRow.HalfUnit("1.09e+04"), 1e-4);
        Assert.Equal(5e-15, ReferenceRow.HalfUnit("2.39e-12"), 1e-20);
    }

    private static ReferenceSet Set(string name) => ReferenceSets.All.Single(s => s.Name == name);
}
