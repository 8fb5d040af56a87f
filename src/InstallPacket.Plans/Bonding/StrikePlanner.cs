using InstallPacket.Calc.Bonding;

namespace InstallPacket.Plans.Bonding;

/// <summary>Flashes to be expected at the house in a year, and the zone at its wall.</summary>
internal sealed class StrikePlanner(Job job, Workings work)
{
    /// <summary>Null when the job does not say how often lightning comes.</summary>
    public StrikePlan? Plan()
    {
        if (job.Bonding.Lightning is not { } survey || Density(survey) is not { } density) return null;
        var factor = StrikeExposure.Places[survey.Place];
        var house = House();
        var tip = job.Siting.AntennaHeight.Value.Metres;
        double? mast = job.Mounting.Kind == MountKind.Attic ? null
            : work.Apply(StrikeExposure.PointFormula, "tip of the mast", job.AntennaHeight()).Number;
        if (house is null && mast is null) return null;
        var governs = mast is null || house >= mast ? "house" : "mast";
        var area = Math.Max(house ?? 0, mast ?? 0);
        var perYear = work.Apply(StrikeExposure.StrikesFormula, "house with mast", density,
            Term.Plan($"bonding.strikes.{governs}_m2", area), Term.Table(NumberTables.ExposureToLightning, survey.Place, factor));
        return new(density, survey.FlashesPerKm2Year is null, survey.Place, factor, house, mast, governs, perYear,
            perYear > 0 ? work.Apply(BondingFormulas.StrikeInterval, "house with mast", perYear).Number : null);
    }

    private Term? Density(LightningSurvey survey) => survey.FlashesPerKm2Year is { } flashes
        ? Term.Key("bonding.lightning.flash-density", flashes)
        : survey.ThunderDays is { } days
            ? work.Apply(StrikeExposure.DensityFormula, "this place", Term.Key("bonding.lightning.thunder-days", days)) : null;

    // The block around the outline, up to the ridge: on the side of caution.
    private double? House()
    {
        if (job.Routing.House is not { } house) return null;
        var length = house.Footprint.Max(p => p.Right) - house.Footprint.Min(p => p.Right);
        var width = house.Footprint.Max(p => p.Up) - house.Footprint.Min(p => p.Up);
        return work.Apply(StrikeExposure.HouseFormula, "house", Term.Key("routing.house.footprint", length),
            Term.Key("routing.house.footprint", width),
            Term.Key("routing.house.ridge", house.Ridge.Metres));
    }
}
