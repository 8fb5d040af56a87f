using CsCheck;
using InstallPacket.Calc.Mounting;

namespace InstallPacket.Calc.Tests.Mounting;

public class MastTests
{
    private static readonly MastSection Section = new(0.05, 0.002);

    [Fact]
    public void The_brackets_hold_what_the_wind_pushes() =>
        Gen.Select(Gen.Double[0, 800], Gen.Double[0, 1], Gen.Double[0, 100], Gen.Double[0.5, 6], Gen.Double[0.2, 2]).Sample((force, share, line, free, spacing) =>
        {
            var mast = new MastCase([new(force, share * free), new(force / 2, free)], line, free, spacing);
            Assert.Equal(1.5 * force + line * free, MastBending.UpperReactionN(mast) - MastBending.LowerReactionN(mast), 1e-6);
        });

    [Fact]
    public void Loads_add_up() =>
        Gen.Select(Gen.Double[0, 500], Gen.Double[0, 3], Gen.Double[0, 500], Gen.Double[0, 3], Gen.Double[0, 80]).Sample((f1, h1, f2, h2, line) =>
        {
            MastCase Case(double wind, params MastLoad[] loads) => new(loads, wind, 3, 0.7);
            double Tip(MastCase c) => MastBending.TipDeflectionM(c, Section, 200e9);
            double Slope(MastCase c) => MastBending.TipSlopeRad(c, Section, 200e9);
            var whole = Case(line, new(f1, h1), new(f2, h2));
            MastCase[] parts = [Case(line), Case(0, new MastLoad(f1, h1)), Case(0, new MastLoad(f2, h2))];
            Assert.Equal(parts.Sum(Tip), Tip(whole), 1e-9);
            Assert.Equal(parts.Sum(Slope), Slope(whole), 1e-9);
            Assert.Equal(parts.Sum(MastBending.MomentNm), MastBending.MomentNm(whole), 1e-6);
        });

    [Fact]
    public void A_mast_clamped_at_its_foot_is_the_cantilever_of_the_handbooks()
    {
        var stiffness = MastSway.StiffnessNm2(Section, 200e9);
        Assert.Equal(100 * 27 / (3 * stiffness), MastBending.TipDeflectionM(new([new(100, 3)], 0, 3, 0), Section, 200e9), 1e-12);
        Assert.Equal(40 * 81 / (8 * stiffness), MastBending.TipDeflectionM(new([], 40, 3, 0), Section, 200e9), 1e-12);
    }

    [Fact]
    public void A_clamped_mast_has_no_pair_of_reactions() =>
        Assert.Throws<ArgumentOutOfRangeException>(() => MastBending.LowerReactionN(new([new(100, 3)], 0, 3, 0)));

    [Fact]
    public void The_plastic_modulus_is_larger_than_the_elastic_one() =>
        Gen.Select(Gen.Double[0.02, 0.2], Gen.Double[0.01, 0.49]).Sample((outer, share) =>
        {
            var section = new MastSection(outer, share * outer);
            Assert.InRange(section.PlasticModulusM3 / section.SectionModulusM3, 1.27, 1.70);
        });

    [Fact]
    public void The_length_at_a_frequency_has_that_frequency() =>
        Gen.Select(Gen.Double[0.2, 10], Gen.Double[0, 10]).Sample((frequency, mass) =>
        {
            var length = MastSway.FreeLengthM(Section, MastTubes.UnknownSteel, frequency, mass);
            Assert.Equal(frequency, MastSway.FirstFrequencyHz(Section, MastTubes.UnknownSteel, length, mass), 1e-6);
        });

    [Fact]
    public void Unknown_materials_are_never_stronger_than_known_ones()
    {
        Assert.Equal(MastTubes.UnknownSteel.YieldPa, MastTubes.Materials.Where(m => !m.IsAluminium).Min(m => m.YieldPa));
        Assert.Equal(MastTubes.UnknownAluminium.YieldPa, MastTubes.Materials.Where(m => m.IsAluminium).Min(m => m.YieldPa));
    }

    [Fact]
    public void Coefficients_lie_between_those_of_the_table_and_hold_beyond_its_ends()
    {
        Assert.Equal(0.7, ForceCoefficient.OfShape("round", 0.2));
        Assert.Equal(1.2, ForceCoefficient.OfShape("round", 60));
        Assert.Equal(1.0, ForceCoefficient.OfShape("round", 16), 1e-12);
        Assert.Equal(1.5, ForceCoefficient.OfShape("dish", 3));
        Assert.Equal(0.8, ForceCoefficient.OfTube(0.5, 0.5, 2000));
        Assert.Throws<ArgumentOutOfRangeException>(() => ForceCoefficient.OfShape("cone", 3));
        Assert.Throws<ArgumentOutOfRangeException>(() => ForceCoefficient.OfLattice("lattice-flat", 0.71));
        Assert.Throws<ArgumentOutOfRangeException>(() => ForceCoefficient.OfLattice("round", 0.5));
    }

    [Fact]
    public void No_angle_has_more_area_than_the_design() =>
        Gen.Select(Gen.Double[0, 1], Gen.Double[0, 1], Gen.Double[-180, 180]).Sample((along, across, angle) =>
            Assert.True(WindForce.AtAngleM2(along, across, angle) <= WindForce.GreatestM2(along, across) + 1e-12));

    [Fact]
    public void What_lies_outside_is_refused_with_value_and_unit()
    {
        var refusal = Assert.Throws<ArgumentOutOfRangeException>(() => MastBending.MomentNm(new([new(100, 3.5)], 0, 3, 0.5)));
        Assert.Contains("3.5", refusal.Message, StringComparison.Ordinal);
        Assert.Contains("in m", refusal.Message, StringComparison.Ordinal);
        Assert.Throws<ArgumentOutOfRangeException>(() => MastBending.MomentNm(new([new(-1, 1)], 0, 3, 0.5)));
        Assert.Throws<ArgumentOutOfRangeException>(() => new MastSection(0.04, 0.021));
        Assert.Throws<ArgumentOutOfRangeException>(() => WindForce.ForceN(1000, 0.5, 1));
        Assert.Throws<ArgumentOutOfRangeException>(() => WindForce.BarsM2([new(0, 0.01, 1, 1.2)]));
        Assert.Throws<ArgumentOutOfRangeException>(() => IceLoad.WeightNPerM(0.04, 0.5));
        Assert.Throws<ArgumentOutOfRangeException>(() => MastStrength.Utilisation(100, 0));
    }
}
