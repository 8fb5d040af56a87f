using System.Reflection;
using InstallPacket.Calc.Sources;

namespace InstallPacket.Calc.Tests.Checks;

/// <summary>All formulas of the calculation core, found by reflection.</summary>
public static class FormulaList
{
    /// <summary>Formulas that no reference row runs yet, each with its reason. Keep it empty, or honest.</summary>
    public static IReadOnlyDictionary<string, string> WithoutRows { get; } = new SortedDictionary<string, string>(StringComparer.Ordinal)
    {
        ["external-noise"] = "power sum of the man-made and the galactic line, which are both checked; the sum by a test of its own",
    };

    public static IReadOnlyList<(FieldInfo Field, Formula Formula)> All { get; } =
    [
        .. typeof(Formula).Assembly.GetTypes()
            .SelectMany(t => t.GetFields(BindingFlags.Static | BindingFlags.Public | BindingFlags.NonPublic))
            .Where(f => f.FieldType.IsAssignableTo(typeof(Formula)))
            .Select(f => (f, (Formula)f.GetValue(null)!))
            .OrderBy(p => p.Item2.Id, StringComparer.Ordinal),
    ];
}
