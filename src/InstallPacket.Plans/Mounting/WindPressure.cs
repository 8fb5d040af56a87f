using InstallPacket.Calc.Mounting;
using InstallPacket.Jobs;

namespace InstallPacket.Plans.Mounting;

/// <summary>The pressure of the wind at the antenna, by the standard of the code family, and the load of a strength check.</summary>
internal sealed class WindPressure(Job job, Workings work)
{
    private static readonly Constant PartialFactor = new("partial-factor-on-wind", WindEurocode.PartialFactor, "project-notes", Calc.Sources.Provenance.Memory);
    private static readonly Constant Directionality = new("directionality", WindAsce.DirectionalityKd, "asce-7-16", Calc.Sources.Provenance.Read);
    private static readonly Constant FlatGround = new("flat-ground", 1, "project-notes", Calc.Sources.Provenance.Derived);
    private static readonly Constant SeaLevel = new("air-at-sea-level", 1, "asce-7-16", Calc.Sources.Provenance.Read);
    private static readonly Constant Turbulence = new("turbulence-factor", 1, "en-1991-1-4", Calc.Sources.Provenance.Read);
    private static readonly Constant AirDensity = new("air-density", WindEurocode.AirDensityKgM3, "en-1991-1-4", Calc.Sources.Provenance.Read);

    private static Given Speed(DesignWind wind) => Term.Key("mounting.wind.speed", wind.SpeedMS);

    private bool Us => job.Code == "us";

    /// <summary>Velocity pressure [Pa].</summary>
    public Row Of(DesignWind wind, double heightM) => Us ? Asce(wind, heightM) : Eurocode(wind, heightM);

    /// <summary>Allowable stress with 0.6 of the ultimate wind for <c>us</c>, the partial factor against yield for <c>eu</c>.</summary>
    public Row Design(Term load, string subject) => Us
        ? work.Apply(AllowableStress.WindLoadFormula, subject, load)
        : work.Apply(MountingFormulas.DesignWindLoad, subject, load, PartialFactor);

    private Row Asce(DesignWind wind, double height)
    {
        var exposure = Enum.Parse<WindExposure>(wind.Exposure.Value);
        var profile = WindProfile.Of(AsceEdition.Asce716, exposure);
        Term Profile(string key, double number) => Term.Table($"wind-exposure.{exposure}.{key}", number);
        var kz = work.Apply(WindAsce.ExposureFormula, exposure, "antenna", MountTerms.Wind("height_m", height),
            Profile("coefficient", profile.Coefficient), Profile("gradient", profile.GradientM), Profile("alpha", profile.Alpha));
        return work.Apply(WindAsce.PressureFormula, "antenna", Speed(wind), kz, Directionality, FlatGround, SeaLevel);
    }

    private Row Eurocode(DesignWind wind, double height)
    {
        var terrain = TerrainCategory.Find(wind.Exposure.Value)!;
        Term Category(string key, double number) => Term.Table($"eurocode-terrain.{wind.Exposure.Value}.{key}", number);
        Term z = MountTerms.Wind("height_m", height), z0 = Category("roughness", terrain.RoughnessM), least = Category("least-height", terrain.LeastHeightM);
        var mean = work.Apply(WindEurocode.MeanVelocityFormula, terrain, "antenna", Speed(wind), z, z0, least, FlatGround);
        var turbulence = work.Apply(WindEurocode.TurbulenceFormula, terrain, "antenna", z, z0, least, FlatGround, Turbulence);
        return work.Apply(WindEurocode.PeakPressureFormula, "antenna", turbulence, mean, AirDensity);
    }
}
