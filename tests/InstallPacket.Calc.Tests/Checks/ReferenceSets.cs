using InstallPacket.Calc.Tests.Bonding;
using InstallPacket.Calc.Tests.Cabling;
using InstallPacket.Calc.Tests.Materials;
using InstallPacket.Calc.Tests.Mounting;
using InstallPacket.Calc.Tests.Reception;
using InstallPacket.Calc.Tests.Routing;
using InstallPacket.Calc.Tests.Siting;

namespace InstallPacket.Calc.Tests.Checks;

/// <summary>The single list of reference sets.</summary>
public static class ReferenceSets
{
    public static IReadOnlyList<ReferenceSet> All { get; } =
    [
        .. GeodesicSets.All,
        .. MagneticSets.All,
        .. PathSets.All,
        .. ChannelSets.All,
        .. FieldSets.All,
        .. NoiseSets.All,
        .. ObstacleSets.All,
        .. InterferenceSets.All,
        .. SpreadSets.All,
        .. AntennaSets.All,
        .. MinimumFieldSets.All,
        .. ItmSets.All,
        .. ItmServiceSets.All,
        .. ItmStageSets.All,
        .. ItmFunctionSets.All,
        .. P1812Sets.All,
        .. CoaxSets.All,
        .. ChainSets.All,
        .. RoutingSets.All,
        .. MountingSets.All,
        .. WoodSets.All,
        .. WindSets.All,
        .. WindCheckSets.All,
        .. EurocodeSets.All,
        .. WindForceSets.All,
        .. MastSets.All,
        .. MountSets.All,
        .. LoadPathSets.All,
        .. MaterialsSets.All,
        .. WireSets.All,
        .. EarthSets.All,
    ];
}
