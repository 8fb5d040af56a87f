using System.Text.RegularExpressions;
using InstallPacket.Calc.Sources;
using InstallPacket.Calc.Tests.Checks;

namespace InstallPacket.Calc.Tests.Rules;

public class FormulaRules
{
    [Fact]
    public void Formulas_are_found() => Assert.True(FormulaList.All.Count > 40);

    [Fact]
    public void Identifiers_are_unique()
    {
        var twice = FormulaList.All.GroupBy(p => p.Formula.Id).Where(g => g.Count() > 1).Select(g => g.Key);
        Assert.Empty(twice);
    }

    [Fact]
    public void Identifiers_are_kebab_case() =>
        Assert.All(FormulaList.All, p => Assert.Matches(new Regex("^[a-z0-9]+(-[a-z0-9]+)*$"), p.Formula.Id));

    [Fact]
    public void Every_formula_stands_in_a_public_readonly_field_named_after_its_method() => Assert.All(FormulaList.All, p =>
    {
        Assert.True(p.Field is { IsPublic: true, IsInitOnly: true }, p.Field.Name);
        Assert.EndsWith("Formula", p.Field.Name, StringComparison.Ordinal);
    });

    [Fact]
    public void Every_formula_says_what_it_is_and_where_it_comes_from() => Assert.All(FormulaList.All, p =>
    {
        Assert.NotEmpty(SourceRegister.Get(p.Formula.Source).Title);
        Assert.All((string[])[p.Formula.Title, p.Formula.Equation, p.Formula.Place, p.Formula.Result.Sign, p.Formula.Result.Meaning], s => Assert.NotEmpty(s));
        Assert.NotEmpty(p.Formula.Inputs);
        Assert.All(p.Formula.Inputs, i => Assert.NotEmpty(i.Sign + i.Meaning));
    });

    [Fact]
    public void Every_formula_is_run_by_a_reference_set_or_says_why_not()
    {
        var named = ReferenceSets.All.SelectMany(s => s.Formulas).ToHashSet();
        var all = FormulaList.All.Select(p => p.Formula.Id).ToHashSet();
        Assert.Empty(all.Except(named).Except(FormulaList.WithoutRows.Keys));
        Assert.Empty(FormulaList.WithoutRows.Keys.Intersect(named));
        Assert.Empty(FormulaList.WithoutRows.Keys.Except(all));
        Assert.Empty(named.Except(all));
    }

    [Fact]
    public void Every_source_is_used_and_named_once()
    {
        var used = FormulaList.All.Select(p => p.Formula.Source).Concat(ReferenceSets.All.Select(s => s.Source)).ToHashSet();
        Assert.Empty(SourceRegister.All.Select(s => s.Id).Except(used));
        Assert.Equal(SourceRegister.All.Count, SourceRegister.All.Select(s => s.Id).Distinct().Count());
        Assert.All(SourceRegister.All, s => Assert.DoesNotContain("", (string[])[s.Id, s.Title, s.Publisher, s.Edition, s.UsedFor]));
    }
}
