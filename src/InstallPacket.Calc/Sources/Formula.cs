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
public record Formula(
    string Id,
    string Title,
    string Equation,
    Symbol Result,
    IReadOnlyList<Symbol> Inputs,
    string Source,
    string Place,
    Provenance Provenance = Provenance.Read)
{
    /// <summary>The method: the inputs in the order and the units of <see cref="Inputs"/> to the result in its unit; null where no planner
    /// applies it.</summary>
    public Func<double[], double>? Method { get; init; }

    /// <summary>The same formula with a method that needs more than the listed inputs.</summary>
    /// <typeparam name="TCase">What it needs.</typeparam>
    /// <param name="method">That, and the inputs in the order and the units of <see cref="Inputs"/>, to the result in its unit.</param>
    public Formula<TCase> By<TCase>(Func<TCase, double[], double> method) => new(this, method);
}

/// <summary>A formula whose method needs more than its listed inputs: a profile of the ground, a table, a mast with its supports.</summary>
/// <typeparam name="TCase">What it needs.</typeparam>
public sealed record Formula<TCase> : Formula
{
    internal Formula(Formula formula, Func<TCase, double[], double> method)
        : base(formula) => MethodOf = method;

    /// <summary>The method.</summary>
    public Func<TCase, double[], double> MethodOf { get; }
}
