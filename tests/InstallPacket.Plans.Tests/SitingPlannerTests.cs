using InstallPacket.Calc.Quantities;
using InstallPacket.Tests;

namespace InstallPacket.Plans.Tests;

public class SitingPlannerTests
{
    [Fact]
    public void Compass_reading_is_true_bearing_less_declination()
    {
        var siting = DemoPlans.Of("alder-lane").Siting;
        Assert.Equal("WMM2025", siting.Compass.Model);
        Assert.InRange(siting.Compass.DeclinationDeg!.Value, 4.0, 4.5); // east, as everywhere between the zero line and the Rockies
        foreach (var site in siting.Sites)
            Assert.Equal(0, Bearing.Turn(site.BearingMagneticDeg!.Value + siting.Compass.DeclinationDeg.Value, site.BearingTrueDeg), 9);
    }

    [Fact]
    public void Date_outside_every_model_leaves_true_bearings_only()
    {
        var plan = DemoPlans.Of("alder-lane", DemoJobs.Load().With("alder-lane/job.yaml", "2026-06-12", "2031-01-01"));
        Assert.False(plan.Siting.Compass.Usable);
        Assert.Null(plan.Siting.Compass.DeclinationDeg);
        Assert.All(plan.Siting.Sites, s => Assert.Null(s.BearingMagneticDeg));
        Assert.Null(plan.Reception.Aim.MagneticDeg);
        Assert.Equal("date: 2031-01-01".Length, plan.Finding("compass-date").At.Column + 9);
    }

    [Fact]
    public void Weak_field_near_the_pole_forbids_the_compass()
    {
        // Eureka, Nunavut, lies in the blackout zone of 2025; the stations are moved along so that something is left to plan.
        var jobs = DemoJobs.Load().With("alder-lane/job.yaml", "43.62000 N", "85.70000 N").With("alder-lane/job.yaml", "99.14000 W", "139.00000 E")
            .With("alder-lane/job.yaml", "stations: tamarack.csv", "within: 300 km\n  transmitters:\n    polar: { name: P, site: P, system: ATSC 1.0, raster: us-6, channel: 20, latitude: 85.9 N, longitude: 139.5 E, power: 10 kW, height: 100 m, polarisation: horizontal }")
            .With("alder-lane/job.yaml", "[kes-9, kes-21, kes-24, kes-30, blu-15, blu-33]", "[polar]");
        var plan = DemoPlans.Of("alder-lane", jobs);
        Assert.True(plan.Siting.Compass.HorizontalNt < 2000);
        Assert.Equal("blackout", plan.Siting.Compass.Zone);
        Assert.True(plan.Has("compass-blackout"));
        Assert.Null(plan.Siting.Sites[0].BearingMagneticDeg);
    }

    [Fact]
    public void Stations_of_one_name_are_one_site()
    {
        var sites = DemoPlans.Of("alder-lane").Siting.Sites;
        Assert.Equal(["Kestrel Ridge", "Bluestem Hill", "Pine Butte"], sites.Select(s => s.Name));
        Assert.Equal(["kes-9", "kes-21", "kes-24", "kes-30"], sites[0].Stations);
        Assert.Equal([1, 2, 3], sites.Select(s => s.Number));
        Assert.False(sites[2].AnyWanted);
    }

    [Fact]
    public void Magnetic_landmark_is_turned_into_a_true_bearing()
    {
        var plan = DemoPlans.Of("far-meadow");
        Assert.Equal(240 + plan.Siting.Compass.DeclinationDeg!.Value, plan.Siting.Landmark!.BearingTrueDeg, 9);
    }
}
