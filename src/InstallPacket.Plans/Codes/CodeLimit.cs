using InstallPacket.Calc.Quantities;
using InstallPacket.Calc.Sources;

namespace InstallPacket.Plans.Codes;

/// <summary>A number of a code family: one row of its <c>limits.csv</c>.</summary>
/// <param name="Id">Kebab-case identifier.</param>
/// <param name="Written">The number as the document has it.</param>
/// <param name="Unit">Its unit; empty for a pure number.</param>
/// <param name="Document">Where it is written.</param>
/// <param name="Edition">Which edition; <c>-</c> where there is none.</param>
/// <param name="Provenance">How it is known: <c>read</c>, <c>derived</c>, <c>memory</c>.</param>
/// <param name="Source">Identifier of the document in the register of sources.</param>
public sealed record CodeLimit(string Id, double Written, string Unit, string Document, string Edition, string Provenance, string Source)
{
    /// <summary>The number in the stored unit: m, m/s, kg; a share in %; a pure number as it is.</summary>
    public double Value { get; } = Written * UnitTable.Factor(Unit);

    /// <summary>The number as a term of the workings.</summary>
    public Constant Term => new(Id, Value, Source, CsvProvenance.Of(Provenance));
}
