using InstallPacket.Calc.Mounting;

namespace InstallPacket.Plans.Codes;

/// <summary>What a code family says of the mast.</summary>
internal interface IMastCode
{
    /// <summary>Whether guys count as supports; else the tube must be safe without them.</summary>
    bool GuysHold { get; }

    /// <summary>The moment that a tube can take [N m].</summary>
    Row Resistance(Workings work, MastSection tube, MastMaterial material);

    /// <summary>The same number without a row.</summary>
    double ResistanceNm(MastSection tube, MastMaterial material);

    /// <summary>How that moment was found, as a word of the theme: <c>allowable-stress</c>, <c>partial-factors</c>.</summary>
    string Method { get; }
}
