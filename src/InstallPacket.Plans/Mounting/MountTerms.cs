using InstallPacket.Calc.Mounting;
using InstallPacket.Calc.Sources;

namespace InstallPacket.Plans.Mounting;

/// <summary>The numbers of a job's mount, as terms of the workings.</summary>
internal static class MountTerms
{
    /// <summary>Nothing of it.</summary>
    public static readonly Constant None = new("none-of-it", 0, "project-notes", Provenance.Derived);

    /// <summary>Length of the mast [m].</summary>
    public static Term MastLength(this Job job) => Term.Key("mounting.mast-length", job.Mounting.MastLength.Metres);

    /// <summary>Height at which people work [m].</summary>
    public static Term WorkHeight(this Job job) => Term.Key("mounting.work-height", job.Mounting.WorkHeight.Metres);

    /// <summary>What a fixing is called in the workings: its part, and a number where the job names the part more than once.</summary>
    public static string Subject(this Fixing f, Job job)
    {
        var same = job.Mounting.Fixings.Where(o => o.Part.Name == f.Part.Name).ToList();
        var place = same.FindIndex(o => ReferenceEquals(o, f));
        return place <= 0 ? f.Part.Name : string.Create(System.Globalization.CultureInfo.InvariantCulture, $"{f.Part.Name} ({place + 1})");
    }

    /// <summary>A key of a fixing.</summary>
    public static Term Key(this Fixing f, string key, double number) => Term.Key($"mounting.fixings.{f.Part.Id}.{key}", number);

    /// <summary>A number of the plan of the wind.</summary>
    public static Given Wind(string key, double number) => Term.Plan("mounting.wind." + key, number);

    /// <summary>A number of what holds the mast.</summary>
    public static Given LoadPath(string key, double number) => Term.Plan("mounting.load_path." + key, number);

    /// <summary>Basic wind speed [m/s].</summary>
    public static Given Speed(this DesignWind wind) => Term.Key("mounting.wind.speed", wind.SpeedMS);

    /// <summary>Section modulus of the tube [mm3].</summary>
    public static Given Section(this MastSection tube) => Wind("section_mm3", tube.SectionModulusM3 * 1e9);

    /// <summary>Yield strength of a material [MPa].</summary>
    public static Term Yield(this MastMaterial material) =>
        Term.Table(NumberTables.TubeMaterials, $"{material.Name}.yield", material.YieldPa / 1e6);

    /// <summary>Stiffness of the tube [N m2].</summary>
    public static Term Stiffness(MastSection tube, double modulusPa) => Wind("stiffness_nm2", MastSway.StiffnessNm2(tube, modulusPa));
}
