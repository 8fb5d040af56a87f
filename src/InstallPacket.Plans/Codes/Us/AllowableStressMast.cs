using InstallPacket.Calc.Mounting;

namespace InstallPacket.Plans.Codes.Us;

/// <summary>The tube by allowable stress; guys hold the mast.</summary>
internal sealed class AllowableStressMast : IMastCode
{
    public bool GuysHold => true;

    public string Method => "allowable-stress";

    public Row Resistance(Workings work, MastSection tube, MastMaterial material)
    {
        var thin = MastStrength.IsThin(tube, material.YieldPa, material.ModulusPa);
        var formula = material.IsAluminium ? MastStrength.AluminiumFormula : thin ? MastStrength.ElasticFormula
            : MastStrength.PlasticFormula;
        return work.Apply(formula, "mast", material.Yield(), material.IsAluminium || thin ? tube.Section()
            : MountTerms.Wind("plastic_mm3", tube.PlasticModulusM3 * 1e9));
    }

    public double ResistanceNm(MastSection tube, MastMaterial material) => MastStrength.AllowableNm(tube, material);
}
