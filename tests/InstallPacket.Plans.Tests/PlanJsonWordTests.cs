using System.Reflection;
using System.Text.Json.Serialization;

namespace InstallPacket.Plans.Tests;

/// <summary>Every closed set that a plan carries is written as its words, never as a number.</summary>
public class PlanJsonWordTests
{
    // Sets that PlanJson writes by its own code: severities of findings, and what the workings know of their formulas and terms.
    private static readonly Type[] Left = [typeof(IReadOnlyList<Finding>), typeof(IReadOnlyList<Row>)];

    [Fact]
    public void Every_closed_set_of_a_plan_has_its_converter()
    {
        var sets = new SortedSet<string>(StringComparer.Ordinal);
        var seen = new HashSet<Type>();
        foreach (var part in typeof(Plan).GetProperties().Where(p => !Left.Contains(p.PropertyType))) Walk(part.PropertyType, sets, seen);
        Assert.True(sets.Count >= 15, string.Join(", ", sets));
        Assert.True(seen.Contains(typeof(Mounting.WindPlan)), "the walk does not reach the wind");
        var converted = PlanJson.Converters.Select(c => Converted(c.GetType())).ToHashSet(StringComparer.Ordinal);
        Assert.Equal([], sets.Where(s => !converted.Contains(s) && !converted.Contains(s.TrimEnd('?'))));
    }

    // A set whose value may be absent is noted with a question mark: the converter of the set writes it too, but not the other way round.
    private static void Walk(Type type, SortedSet<string> sets, HashSet<Type> seen)
    {
        if (!seen.Add(type)) return;
        var inner = Nullable.GetUnderlyingType(type);
        if ((inner ?? type).IsEnum) sets.Add(Name(type));
        else if (inner is not null) Walk(inner, sets, seen);
        if (type.IsArray) Walk(type.GetElementType()!, sets, seen);
        foreach (var argument in type.GetGenericArguments().Where(_ => inner is null)) Walk(argument, sets, seen);
        if (type.Namespace?.StartsWith("InstallPacket", StringComparison.Ordinal) != true || type.IsEnum) return;
        foreach (var property in type.GetProperties(BindingFlags.Public | BindingFlags.Instance).Where(Written)) Walk(property.PropertyType, sets, seen);
    }

    private static bool Written(PropertyInfo property) =>
        property.GetIndexParameters().Length == 0 && property.GetCustomAttribute<JsonIgnoreAttribute>()?.Condition is not JsonIgnoreCondition.Always;

    private static string Converted(Type converter)
    {
        while (converter.BaseType is { } parent && !(parent.IsGenericType && parent.GetGenericTypeDefinition() == typeof(JsonConverter<>))) converter = parent;
        return Name(converter.BaseType!.GetGenericArguments()[0]);
    }

    private static string Name(Type type) => Nullable.GetUnderlyingType(type) is { } inner ? inner.Name + "?" : type.Name;
}
