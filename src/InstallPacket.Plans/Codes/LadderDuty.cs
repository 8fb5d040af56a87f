using InstallPacket.Calc.Quantities;

namespace InstallPacket.Plans.Codes;

/// <summary>A duty rating of ladders: person, clothes, tools and what is carried, all together.</summary>
/// <param name="Rating">Its word.</param>
/// <param name="Written">What it holds, as the document has it.</param>
/// <param name="Unit">Its unit.</param>
/// <param name="Document">Where it is written.</param>
/// <param name="Edition">Which edition.</param>
/// <param name="Provenance">How it is known.</param>
public sealed record LadderDuty(string Rating, double Written, string Unit, string Document, string Edition, string Provenance)
{
    /// <summary>What it holds [kg].</summary>
    public double CapacityKg { get; } = Written * UnitTable.Factor(Unit);
}
