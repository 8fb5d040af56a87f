using InstallPacket.Calc.Sources;

namespace InstallPacket.Calc.Work;

/// <summary>A table of the program from which numbers of the workings are read: thresholds, soils, tubes, hours.</summary>
/// <param name="Id">Kebab-case identifier; the origin of an input begins with it.</param>
/// <param name="Source">Identifier in <see cref="SourceRegister"/>.</param>
/// <param name="Provenance">How its least certain row is known.</param>
/// <param name="File">Its file below the project that holds it; null where the rows stand in code.</param>
public sealed record NumberTable(string Id, string Source, Provenance Provenance, string? File = null);

/// <summary>The tables of the program.</summary>
public static class NumberTables
{
    /// <summary>Channels of the rasters.</summary>
    public static readonly NumberTable Channels = new("channels", "project-notes", Provenance.Memory, "Reception/channels.csv");

    /// <summary>Noise bandwidth of a system in a channel.</summary>
    public static readonly NumberTable NoiseBandwidth = new("noise-bandwidth", "project-notes", Provenance.Memory);

    /// <summary>Required carrier-to-noise ratios; each row names its own document.</summary>
    public static readonly NumberTable CnThresholds = new("cn-thresholds", "cn-table", Provenance.Memory, "Reception/cn-thresholds.csv");

    /// <summary>Factors from bare trees to trees in leaf.</summary>
    public static readonly NumberTable Vegetation = new("vegetation", "project-notes", Provenance.Memory);

    /// <summary>Reference values of woodland.</summary>
    public static readonly NumberTable Woodland = new("woodland", "itu-p833", Provenance.Read, "Reception/vegetation-p833.csv");

    /// <summary>Strengths of mast materials; the file names the source of each group of rows.</summary>
    public static readonly NumberTable TubeMaterials = new("tube-materials", "project-notes", Provenance.Memory,
        "Mounting/tube-materials.csv");

    /// <summary>Constants of the wind profile of the United States.</summary>
    public static readonly NumberTable WindExposure = new("wind-exposure", "asce-7-16", Provenance.Read, "Mounting/wind-exposure.csv");

    /// <summary>Terrain categories of the European wind.</summary>
    public static readonly NumberTable EurocodeTerrain = new("eurocode-terrain", "en-1991-1-4", Provenance.Read,
        "Mounting/eurocode-terrain.csv");

    /// <summary>Specific gravity of timber.</summary>
    public static readonly NumberTable WoodSpecificGravity =
        new("wood-specific-gravity", "nds-gravity", Provenance.Derived, "Mounting/Wood/wood-specific-gravity.csv");

    /// <summary>Dimensions of lag screws.</summary>
    public static readonly NumberTable LagScrews = new("lag-screws", "nds-chapter-12", Provenance.Memory);

    /// <summary>Dimensions of wood screws by gauge.</summary>
    public static readonly NumberTable WoodScrews = new("wood-screws", "nds-chapter-12", Provenance.Memory);

    /// <summary>Factors of load duration and moisture.</summary>
    public static readonly NumberTable TimberModification = new("kmod", "en-1995-1-1", Provenance.Memory);

    /// <summary>Densities of the strength classes of timber.</summary>
    public static readonly NumberTable TimberClasses = new("timber-classes", "en-338", Provenance.Memory);

    /// <summary>Resistivity of soils.</summary>
    public static readonly NumberTable SoilResistivity = new("soil-resistivity", "project-notes", Provenance.Memory,
        "Bonding/soil-resistivity.csv");

    /// <summary>Factors of the place of a house for lightning.</summary>
    public static readonly NumberTable ExposureToLightning = new("exposure-to-lightning", "nfpa-780", Provenance.Read);

    /// <summary>Resistivity of metals.</summary>
    public static readonly NumberTable Resistivity = new("resistivity", "wire-table", Provenance.Memory);

    /// <summary>Person-hours of the tasks.</summary>
    public static readonly NumberTable Hours = new("hours", "project-notes", Provenance.Memory, "Materials/hours.csv");

    /// <summary>All tables.</summary>
    public static IReadOnlyList<NumberTable> All { get; } =
    [
        Channels, NoiseBandwidth, CnThresholds, Vegetation, Woodland, TubeMaterials, WindExposure, EurocodeTerrain, WoodSpecificGravity,
            LagScrews,
        WoodScrews, TimberModification, TimberClasses, SoilResistivity, ExposureToLightning, Resistivity, Hours,
    ];
}
