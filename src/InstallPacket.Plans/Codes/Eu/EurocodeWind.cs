using InstallPacket.Calc.Mounting;
using InstallPacket.Calc.Sources;

namespace InstallPacket.Plans.Codes.Eu;

/// <summary>Wind after EN 1991-1-4, with a partial factor against yield.</summary>
internal sealed class EurocodeWind : IWindCode
{
    private static readonly Constant PartialFactor = new("partial-factor-on-wind", WindEurocode.PartialFactor, "project-notes",
        Provenance.Memory);
    private static readonly Constant FlatGround = new("flat-ground", 1, "project-notes", Provenance.Derived);
    private static readonly Constant Turbulence = new("turbulence-factor", 1, "en-1991-1-4", Provenance.Read);
    private static readonly Constant AirDensity = new("air-density", WindEurocode.AirDensityKgM3, "en-1991-1-4", Provenance.Read);

    public IReadOnlyList<string> Exposures { get; } = ["0", "I", "II", "III", "IV"];

    public double DesignFactor => WindEurocode.PartialFactor;

    public Row PressurePa(Workings work, DesignWind wind, double heightM)
    {
        var terrain = TerrainCategory.Find(wind.Exposure.Value)!;
        Term Category(string key, double number) => Term.Table(NumberTables.EurocodeTerrain, $"{wind.Exposure.Value}.{key}", number);
        Term z = MountTerms.Wind("height_m", heightM), z0 = Category("roughness", terrain.RoughnessM),
            least = Category("least-height", terrain.LeastHeightM);
        var mean = work.Apply(WindEurocode.MeanVelocityFormula, terrain, "antenna", wind.Speed(), z, z0, least, FlatGround);
        var turbulence = work.Apply(WindEurocode.TurbulenceFormula, terrain, "antenna", z, z0, least, FlatGround, Turbulence);
        return work.Apply(WindEurocode.PeakPressureFormula, "antenna", turbulence, mean, AirDensity);
    }

    public Row Design(Workings work, Term load, Subject subject) =>
        work.Apply(MountingFormulas.DesignWindLoad, subject, load, PartialFactor);
}
