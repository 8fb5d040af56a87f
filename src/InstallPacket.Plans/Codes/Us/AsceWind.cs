using InstallPacket.Calc.Mounting;
using InstallPacket.Calc.Sources;

namespace InstallPacket.Plans.Codes.Us;

/// <summary>Wind after ASCE 7-16, with 0.6 of the ultimate wind against allowable stresses.</summary>
internal sealed class AsceWind : IWindCode
{
    private static readonly Constant Directionality = new("directionality", WindAsce.DirectionalityKd, "asce-7-16", Provenance.Read);
    private static readonly Constant FlatGround = new("flat-ground", 1, "project-notes", Provenance.Derived);
    private static readonly Constant SeaLevel = new("air-at-sea-level", 1, "asce-7-16", Provenance.Read);

    public IReadOnlyList<string> Exposures { get; } = Enum.GetNames<WindExposure>();

    public double DesignFactor => AllowableStress.WindLoad(1);

    public Row PressurePa(Workings work, DesignWind wind, double heightM)
    {
        var exposure = Enum.Parse<WindExposure>(wind.Exposure.Value);
        var profile = WindProfile.Of(AsceEdition.Asce716, exposure);
        Term Profile(string key, double number) => Term.Table(NumberTables.WindExposure, $"{exposure}.{key}", number);
        var kz = work.Apply(WindAsce.ExposureFormula, exposure, "antenna", MountTerms.Wind("height_m", heightM),
            Profile("coefficient", profile.Coefficient), Profile("gradient", profile.GradientM), Profile("alpha", profile.Alpha));
        return work.Apply(WindAsce.PressureFormula, "antenna", wind.Speed(), kz, Directionality, FlatGround, SeaLevel);
    }

    public Row Design(Workings work, Term load, Subject subject) => work.Apply(AllowableStress.WindLoadFormula, subject, load);
}
