namespace InstallPacket.Drawings;

/// <summary>What a sheet draws: a plan, and the words that speak for it.</summary>
/// <param name="Plan">The plan.</param>
/// <param name="Words">Texts and numbers in the language and units of the job.</param>
public sealed record SheetPlan(Plan Plan, IWords Words)
{
    /// <summary>What job it is.</summary>
    public JobFacts Job => Plan.Job;

    /// <summary>Place, bearings, compass.</summary>
    public SitingPlan Siting => Plan.Siting;

    /// <summary>Stations, field strength, aim.</summary>
    public ReceptionPlan Reception => Plan.Reception;

    /// <summary>Levels and margins from the antenna to every outlet.</summary>
    public CablingPlan Cabling => Plan.Cabling;

    /// <summary>Runs and their lengths.</summary>
    public RoutingPlan Routing => Plan.Routing;

    /// <summary>Mount, ladder, clearances.</summary>
    public MountingPlan Mounting => Plan.Mounting;

    /// <summary>Bonding conductors and rules.</summary>
    public BondingPlan Bonding => Plan.Bonding;

    /// <summary>What to buy and cut.</summary>
    public MaterialsPlan Materials => Plan.Materials;

    /// <summary>The same words for another plan.</summary>
    /// <param name="plan">The plan.</param>
    public SheetPlan With(Plan plan) => this with { Plan = plan };

    /// <summary>Prints numbers with the signs and units of the job.</summary>
    public UnitPrinter Print => Words.Print;

    /// <summary>A text of the figures.</summary>
    /// <param name="id">Its id below <c>figures</c>.</param>
    /// <param name="values">Values that the text names.</param>
    public string Say(string id, params ReadOnlySpan<(string Name, object? Value)> values) => Words.Say("figures." + id, values);

    /// <summary>A closed word of the plan, such as the way of a run.</summary>
    /// <param name="kind">Its kind.</param>
    /// <param name="word">The word.</param>
    public string Word(string kind, string word) => Words.Say($"values.{kind}.{word}");

    /// <summary>A closed word of the plan as printed.</summary>
    /// <typeparam name="T">Which words.</typeparam>
    /// <param name="kind">Its kind in the words file.</param>
    /// <param name="word">The word.</param>
    public string Word<T>(string kind, T word)
        where T : struct, Enum => Word(kind, Jobs.Text.Word.Of(word));

    /// <summary>A set phrase of the plan, or a name of the job.</summary>
    /// <param name="phrase">The phrase.</param>
    public string Name(string phrase) => Words.Name(phrase);

    /// <summary>The size of a bonding conductor.</summary>
    /// <param name="size">The size.</param>
    public string Size(BondSize size) => Words.Say("sizes.conductor", ("c", size.Values()));

    /// <summary>A bearing that says its north.</summary>
    /// <param name="degrees">The true bearing.</param>
    public string True(double degrees) => Say("true", ("bearing", Print.Bearing(degrees)));

    /// <summary>Texts in one line, as the language joins them.</summary>
    /// <param name="items">The texts.</param>
    public string List(IEnumerable<string> items) => Words.List(items);
}
