using InstallPacket.Calc.Mounting;

namespace InstallPacket.Plans.Codes.Eu;

/// <summary>The tube to its yield, elastic; it must be safe without its guys.</summary>
internal sealed class PartialFactorMast : IMastCode
{
    public bool GuysHold => false;

    public string Method => "partial-factors";

    public Row Resistance(Workings work, MastSection tube, MastMaterial material) =>
        work.Apply(MountingFormulas.DesignResistance, "mast", material.Yield(), tube.Section());

    public double ResistanceNm(MastSection tube, MastMaterial material) => material.YieldPa * tube.SectionModulusM3;
}
