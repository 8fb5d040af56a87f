using InstallPacket.Calc.Mounting;

namespace InstallPacket.Plans.Mounting;

/// <summary>The pressure of the wind at the antenna, by the standard of the code family, and the load of a strength check.</summary>
internal sealed class WindPressure(Job job, WorkLog log)
{
    private bool Us => job.Code == "us";

    /// <summary>Velocity pressure [Pa].</summary>
    public double Of(DesignWind wind, double heightM) => Us ? Asce(wind, heightM) : Eurocode(wind, heightM);

    /// <summary>Allowable stress with 0.6 of the ultimate wind for <c>us</c>, the partial factor against yield for <c>eu</c>.</summary>
    public double Design(double load, string subject) => Us
        ? log.Record(AllowableStress.WindLoadFormula, subject, AllowableStress.WindLoad(load), load)
        : log.Record(MountingFormulas.DesignWindLoad, subject, WindEurocode.PartialFactor * load, load, WindEurocode.PartialFactor);

    private double Asce(DesignWind wind, double height)
    {
        var exposure = Enum.Parse<WindExposure>(wind.Exposure.Value);
        var profile = WindProfile.Of(AsceEdition.Asce716, exposure);
        var kz = log.Record(WindAsce.ExposureFormula, "antenna", WindAsce.Kz(AsceEdition.Asce716, exposure, height), height, profile.Coefficient, profile.GradientM, profile.Alpha);
        return log.Record(WindAsce.PressureFormula, "antenna", WindAsce.VelocityPressurePa(wind.SpeedMS, kz, WindAsce.DirectionalityKd), wind.SpeedMS, kz, WindAsce.DirectionalityKd, 1, 1);
    }

    private double Eurocode(DesignWind wind, double height)
    {
        var terrain = TerrainCategory.Find(wind.Exposure.Value)!;
        var mean = log.Record(WindEurocode.MeanVelocityFormula, "antenna", WindEurocode.MeanVelocityMS(terrain, height, wind.SpeedMS), wind.SpeedMS, height, terrain.RoughnessM, terrain.LeastHeightM, 1);
        var turbulence = log.Record(WindEurocode.TurbulenceFormula, "antenna", WindEurocode.Turbulence(terrain, height), height, terrain.RoughnessM, terrain.LeastHeightM, 1, 1);
        return log.Record(WindEurocode.PeakPressureFormula, "antenna", WindEurocode.PeakPressurePa(terrain, height, wind.SpeedMS), turbulence, mean, WindEurocode.AirDensityKgM3);
    }
}
