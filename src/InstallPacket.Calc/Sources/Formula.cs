namespace InstallPacket.Calc.Sources;

/// <summary>One symbol of an equation.</summary>
/// <param name="Sign">The sign as written in the equation, for example <c>d</c>.</param>
/// <param name="Unit">The unit of the value that is recorded, for example <c>km</c>; empty for a pure number.</param>
/// <param name="Meaning">What it stands for, in a few words.</param>
public sealed record Symbol(string Sign, string Unit, string Meaning);

/// <summary>
/// A published equation as data. It stands beside the method that computes it, so that the packet prints exactly what ran.
/// </summary>
/// <param name="Id">Kebab-case identifier, unique in the program.</param>
/// <param name="Title">What it gives, in words of the trade.</param>
/// <param name="Equation">The equation in plain text.</param>
/// <param name="Result">The symbol on the left side.</param>
/// <param name="Inputs">The symbols on the right side, in the order in which values are recorded.</param>
/// <param name="Source">Identifier in <see cref="SourceRegister"/>.</param>
/// <param name="Place">Section, equation or table number in that source.</param>
/// <param name="Provenance">How the equation is known.</param>
public sealed record Formula(
    string Id,
    string Title,
    string Equation,
    Symbol Result,
    IReadOnlyList<Symbol> Inputs,
    string Source,
    string Place,
    Provenance Provenance = Provenance.Read);

/// <summary>One application of a formula: what was put in, and what came out.</summary>
/// <param name="Formula">The equation used.</param>
/// <param name="Subject">What it was applied to, for example <c>RF 21 at outlet kitchen</c>.</param>
/// <param name="Inputs">Values in the order and the units of <see cref="Formula.Inputs"/>.</param>
/// <param name="Result">Value in the unit of <see cref="Formula.Result"/>.</param>
public sealed record Worked(Formula Formula, string Subject, IReadOnlyList<double> Inputs, double Result);
