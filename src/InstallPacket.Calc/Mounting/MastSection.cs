using InstallPacket.Calc.Reception;
using InstallPacket.Calc.Sources;

namespace InstallPacket.Calc.Mounting;

/// <summary>The cross-section of a round tube without holes; holes drilled at the bracket are to be deducted or forbidden.</summary>
public readonly record struct MastSection
{
    /// <summary>The area.</summary>
    public static readonly Formula AreaFormula = new(
        "tube-area",
        "Area of a tube",
        "A = pi (D^2 - d^2) / 4, d = D - 2 t",
        new("A", "mm2", "area"), [new("D", "mm", "outside diameter"), new("t", "mm", "wall")],
        "project-notes", "plain geometry", Provenance.Derived);

    /// <summary>The second moment of area.</summary>
    public static readonly Formula InertiaFormula = new(
        "tube-inertia",
        "Second moment of area of a tube",
        "I = pi (D^4 - d^4) / 64, d = D - 2 t",
        new("I", "mm4", "second moment of area"), [new("D", "mm", "outside diameter"), new("t", "mm", "wall")],
        "project-notes", "plain geometry", Provenance.Derived);

    /// <summary>The elastic section modulus.</summary>
    public static readonly Formula SectionModulusFormula = new(
        "tube-section-modulus",
        "Section modulus of a tube",
        "S = 2 I / D",
        new("S", "mm3", "section modulus"), [new("I", "mm4", "second moment of area"), new("D", "mm", "outside diameter")],
        "project-notes", "plain geometry", Provenance.Derived);

    /// <summary>The plastic section modulus.</summary>
    public static readonly Formula PlasticModulusFormula = new(
        "tube-plastic-modulus",
        "Plastic section modulus of a tube",
        "Z = (D^3 - d^3) / 6, d = D - 2 t",
        new("Z", "mm3", "plastic modulus"), [new("D", "mm", "outside diameter"), new("t", "mm", "wall")],
        "project-notes", "plain geometry", Provenance.Derived);

    /// <summary>A tube.</summary>
    /// <param name="outerM">Outside diameter [m], above 0 to 1; outside throws.</param>
    /// <param name="wallM">Wall [m], above 0 to half the diameter; outside throws.</param>
    public MastSection(double outerM, double wallM)
    {
        OuterM = Limit.Within(outerM, 1e-4, 1, "outside diameter in m");
        WallM = Limit.Within(wallM, 1e-6, outerM / 2, "wall in m");
    }

    /// <summary>Outside diameter [m].</summary>
    public double OuterM { get; }

    /// <summary>Wall [m].</summary>
    public double WallM { get; }

    /// <summary>Inside diameter [m].</summary>
    public double InnerM => OuterM - 2 * WallM;

    /// <summary>Area [m2].</summary>
    public double AreaM2 => Math.PI * (OuterM * OuterM - InnerM * InnerM) / 4;

    /// <summary>Second moment of area [m4].</summary>
    public double InertiaM4 => Math.PI * (Math.Pow(OuterM, 4) - Math.Pow(InnerM, 4)) / 64;

    /// <summary>Elastic section modulus [m3].</summary>
    public double SectionModulusM3 => 2 * InertiaM4 / OuterM;

    /// <summary>Plastic section modulus [m3].</summary>
    public double PlasticModulusM3 => (Math.Pow(OuterM, 3) - Math.Pow(InnerM, 3)) / 6;

    /// <summary>Outside diameter to wall.</summary>
    public double Slenderness => OuterM / WallM;

    /// <summary>Mass of the tube.</summary>
    /// <param name="densityKgM3">Density [kg/m3], 100 to 20 000; outside throws.</param>
    /// <returns>Mass per metre [kg/m].</returns>
    public double MassKgM(double densityKgM3) => AreaM2 * Limit.Within(densityKgM3, 100, 20_000, "density in kg/m3");
}
