using InstallPacket.Calc.Sources;

namespace InstallPacket.Calc.Work;

/// <summary>
/// A number that knows where it comes from: a row of the workings, a key of the job, a figure of a part, a number of the plan, or a named
/// constant.
/// It stands wherever a plain number stands.
/// </summary>
/// <param name="number">The number, in the unit that its user names.</param>
public abstract class Term(double number)
{
    /// <summary>The number.</summary>
    public double Number { get; } = number;

    /// <summary>The number without its origin.</summary>
    public static implicit operator double(Term term)
    {
        ArgumentNullException.ThrowIfNull(term);
        return term.Number;
    }

    /// <summary>The number without its origin.</summary>
    public double ToDouble() => Number;

    /// <summary>The same quantity in another unit.</summary>
    /// <param name="factor">New unit over old unit, a conversion of units and nothing else.</param>
    public Term In(double factor) => new Converted(this, factor);

    /// <summary>A key of the job.</summary>
    /// <param name="path">Its path, as on the page of keys; names of the author in place of NAME.</param>
    /// <param name="number">Its value.</param>
    public static Given Key(string path, double number) => new(GivenBy.Key, path, number);

    /// <summary>A figure of a part.</summary>
    /// <param name="part">Name of the part.</param>
    /// <param name="key">Its key.</param>
    /// <param name="number">Its value; of a figure over frequency, that at the frequency in question.</param>
    public static Given Part(string part, string key, double number) => new(GivenBy.Part, $"{part}.{key}", number);

    /// <summary>A field of a station.</summary>
    /// <param name="station">Name of the station.</param>
    /// <param name="field">The field, as a key of a job's own transmitter.</param>
    /// <param name="number">Its value.</param>
    public static Given Station(string station, string field, double number) => new(GivenBy.Station, $"{station}.{field}", number);

    /// <summary>A row of a table of the program: a threshold, a soil, a tube, a task.</summary>
    /// <param name="table">The table.</param>
    /// <param name="row">The row, with its column where it has several.</param>
    /// <param name="number">Its value.</param>
    public static Given Table(NumberTable table, string row, double number)
    {
        ArgumentNullException.ThrowIfNull(table);
        return new(GivenBy.Table, $"{table.Id}.{row}", number);
    }

    /// <summary>A height of the ground, from tiles or from a measured profile.</summary>
    /// <param name="place">Where.</param>
    /// <param name="number">Height above sea level [m].</param>
    public static Given Ground(string place, double number) => new(GivenBy.Ground, place, number);

    /// <summary>A number of the plan that is no row: a count, a setting, a choice between rows, a result of geometry.</summary>
    /// <param name="path">Its path in <c>plan.json</c>; an entry of a list by its name or number in brackets.</param>
    /// <param name="number">Its value.</param>
    public static Given Plan(string path, double number) => new(GivenBy.Plan, path, number);
}

/// <summary>Who gave a number.</summary>
public enum GivenBy
{
    /// <summary>A key of the job, or its default.</summary>
    Key,

    /// <summary>A figure of a part.</summary>
    Part,

    /// <summary>A field of a station.</summary>
    Station,

    /// <summary>A row of a table of the program.</summary>
    Table,

    /// <summary>The ground, by tiles or by a measured profile.</summary>
    Ground,

    /// <summary>The plan.</summary>
    Plan,
}

/// <summary>A number that is read and not computed by a formula.</summary>
/// <param name="by">Who gave it.</param>
/// <param name="path">Where it stands.</param>
/// <param name="number">Its value.</param>
public sealed class Given(GivenBy by, string path, double number) : Term(number)
{
    /// <summary>Who gave it.</summary>
    public GivenBy By { get; } = by;

    /// <summary>Where it stands.</summary>
    public string Path { get; } = path;
}

/// <summary>A constant with a name and a source.</summary>
/// <param name="name">What it is, in kebab-case.</param>
/// <param name="number">Its value.</param>
/// <param name="source">Identifier in <see cref="SourceRegister"/>.</param>
/// <param name="provenance">How it is known.</param>
public sealed class Constant(string name, double number, string source, Provenance provenance) : Term(number)
{
    /// <summary>What it is.</summary>
    public string Name { get; } = name;

    /// <summary>Identifier in <see cref="SourceRegister"/>.</summary>
    public string Source { get; } = source;

    /// <summary>How it is known.</summary>
    public Provenance Provenance { get; } = provenance;
}

/// <summary>A term in another unit.</summary>
/// <param name="of">The term.</param>
/// <param name="factor">New unit over old unit.</param>
public sealed class Converted(Term of, double factor) : Term(of.Number * factor)
{
    /// <summary>The term.</summary>
    public Term Of { get; } = of;

    /// <summary>New unit over old unit.</summary>
    public double Factor { get; } = factor;
}

/// <summary>One application of a formula: what was put in, and what came out.</summary>
/// <param name="formula">The formula.</param>
/// <param name="about">What it was applied to.</param>
/// <param name="inputs">The inputs, in the order and the units of the formula.</param>
/// <param name="result">The result, in the unit of the formula.</param>
public sealed class Row(Formula formula, Subject about, IReadOnlyList<Term> inputs, double result) : Term(result)
{
    /// <summary>The formula.</summary>
    public Formula Formula { get; } = formula;

    /// <summary>What it was applied to.</summary>
    public Subject About { get; } = about;

    /// <summary>The same as a text, for example <c>RF 21 at outlet kitchen</c>; it tells the rows of a formula apart.</summary>
    public string Subject => About.ToString();

    /// <summary>The inputs, in the order and the units of the formula.</summary>
    public IReadOnlyList<Term> Inputs { get; } = inputs;
}
