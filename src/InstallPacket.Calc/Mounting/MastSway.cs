using InstallPacket.Calc.Reception;
using InstallPacket.Calc.Sources;

namespace InstallPacket.Calc.Mounting;

/// <summary>A tube and its material.</summary>
/// <param name="Section">The tube.</param>
/// <param name="Material">The material.</param>
public sealed record SwayingMast(MastSection Section, MastMaterial Material);

/// <summary>How a mast sways: its first frequency, as a cantilever held at the upper bracket.</summary>
public static class MastSway
{
    // Share of its own mass that swings with the tip of a cantilever.
    private const double OwnShare = 0.2427;

    /// <summary>The first frequency.</summary>
    public static readonly Formula<SwayingMast> FrequencyFormula = new Formula(
        "mast-frequency",
        "First frequency of the mast",
        "f1 = sqrt(3 E I / (L^3 (mt + 0.2427 m L))) / (2 pi)",
        new("f1", "Hz", "frequency"),
            [new("E I", "N m2", "stiffness"), new("L", "m", "free length"), new("mt", "kg", "mass at the top"),
            new("m", "kg/m", "mass of the mast")],
        "project-notes", "mechanics of beams, fixed at the upper bracket", Provenance.Derived)
        .By<SwayingMast>((tube, v) => FirstFrequencyHz(tube.Section, tube.Material, v[1], v[2]));

    /// <summary>The bending stiffness E I.</summary>
    /// <param name="section">Cross-section.</param>
    /// <param name="modulusPa">Modulus of elasticity [Pa], 1e9 to 1e12; outside throws.</param>
    /// <returns>Stiffness [N m2].</returns>
    public static double StiffnessNm2(MastSection section, double modulusPa) =>
        Limit.Within(modulusPa, 1e9, 1e12, "modulus of elasticity in Pa") * section.InertiaM4;

    /// <summary>The first frequency.</summary>
    /// <param name="section">Cross-section.</param>
    /// <param name="material">Material.</param>
    /// <param name="freeM">Free length [m], above 0 to 100; outside throws.</param>
    /// <param name="topKg">Mass of the antennas [kg], not negative; outside throws.</param>
    /// <returns>Frequency [Hz].</returns>
    public static double FirstFrequencyHz(MastSection section, MastMaterial material, double freeM, double topKg)
    {
        Limit.Between(freeM, 0, 100, "free length in m");
        var massKg = Limit.AtLeast(topKg, 0, "mass at the top in kg") + OwnShare * section.MassKgM(material.DensityKgM3) * freeM;
        return Math.Sqrt(3 * StiffnessNm2(section, material.ModulusPa) / (Math.Pow(freeM, 3) * massKg)) / (2 * Math.PI);
    }

    /// <summary>The free length at which the first frequency falls to a value.</summary>
    /// <param name="section">Cross-section.</param>
    /// <param name="material">Material.</param>
    /// <param name="frequencyHz">Frequency [Hz], 0.1 to 100; outside throws.</param>
    /// <param name="topKg">Mass of the antennas [kg], not negative; outside throws.</param>
    /// <returns>Length [m], 99.9 at most.</returns>
    public static double FreeLengthM(MastSection section, MastMaterial material, double frequencyHz, double topKg)
    {
        Limit.Within(frequencyHz, 0.1, 100, "frequency in Hz");
        var (low, high) = (0.001, 99.9);
        for (var i = 0; i < 60; i++)
        {
            var middle = (low + high) / 2;
            if (FirstFrequencyHz(section, material, middle, topKg) > frequencyHz) low = middle;
            else high = middle;
        }
        return high;
    }
}
