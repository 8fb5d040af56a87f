using InstallPacket.Calc.Bonding;

namespace InstallPacket.Plans.Bonding;

/// <summary>Flashes to be expected at the house in a year, and the zone at its wall.</summary>
internal sealed class StrikePlanner(Job job, WorkLog log)
{
    /// <summary>Null when the job does not say how often lightning comes.</summary>
    public StrikePlan? Plan()
    {
        if (job.Bonding.Lightning is not { } survey || Density(survey) is not { } density) return null;
        var factor = StrikeExposure.Places[survey.Place];
        var house = House();
        var tip = job.Siting.AntennaHeight.Value.Metres;
        double? mast = job.Mounting.Kind == MountKind.Attic ? null : log.Record(StrikeExposure.PointFormula, "tip of the mast", StrikeExposure.PointM2(tip), tip);
        if (house is null && mast is null) return null;
        var governs = mast is null || house >= mast ? "house" : "mast";
        var area = Math.Max(house ?? 0, mast ?? 0);
        var perYear = log.Record(StrikeExposure.StrikesFormula, "house with mast", StrikeExposure.PerYear(density, area, factor), density, area, factor);
        return new(density, survey.FlashesPerKm2Year is null, survey.Place, factor, house, mast, governs, perYear,
            perYear > 0 ? log.Record(BondingFormulas.StrikeInterval, "house with mast", 1 / perYear, perYear) : null);
    }

    private double? Density(LightningSurvey survey) => survey.FlashesPerKm2Year ?? (survey.ThunderDays is { } days
        ? log.Record(StrikeExposure.DensityFormula, "this place", StrikeExposure.DensityPerKm2(days), days) : null);

    // The block around the outline, up to the ridge: on the side of caution.
    private double? House()
    {
        if (job.Routing.House is not { } house) return null;
        var length = house.Footprint.Max(p => p.Right) - house.Footprint.Min(p => p.Right);
        var width = house.Footprint.Max(p => p.Up) - house.Footprint.Min(p => p.Up);
        return log.Record(StrikeExposure.HouseFormula, "house", StrikeExposure.HouseM2(length, width, house.Ridge.Metres), length, width, house.Ridge.Metres);
    }
}
