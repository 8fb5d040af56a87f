namespace InstallPacket.Plans.Cabling;

/// <summary>Levels and margins from the antenna to every outlet.</summary>
/// <param name="ColdC">Coldest cable.</param>
/// <param name="HotC">Hottest cable.</param>
/// <param name="Receiver">The receiver calculated with.</param>
/// <param name="ReceiverLargestDbm">Its highest input level, or null when its part does not say.</param>
/// <param name="Elements">The chain in the order of the signal.</param>
/// <param name="Outlets">Every outlet with its channels.</param>
/// <param name="TestPoints">Where to measure, and what to expect.</param>
/// <param name="Ladder">The level ladder of the outlet with the smallest margin; null when nothing could be calculated.</param>
public sealed record CablingPlan(
    double ColdC, double HotC, string Receiver, double? ReceiverLargestDbm, IReadOnlyList<ElementPlan> Elements,
        IReadOnlyList<OutletPlan> Outlets,
    IReadOnlyList<TestPointPlan> TestPoints, LadderPlan? Ladder)
{
    /// <summary>Stations that nobody asked for and that may show up in a scan all the same, strongest first.</summary>
    public IReadOnlyList<NotWantedChannel> NotWanted { get; init; } = [];

    /// <summary>What all stations together do to each amplifier.</summary>
    public IReadOnlyList<AmplifierPlan> Amplifiers { get; init; } = [];

    /// <summary>How amplifiers are fed through their cables.</summary>
    public IReadOnlyList<FeedPlan> Feeds { get; init; } = [];

    /// <summary>The entry of an internet service; null when there is none or the job does not describe it.</summary>
    public ServicePlan? Service { get; init; }

    /// <summary>The two outlets that are kept least from each other: in different dwellings, and in one.</summary>
    public IReadOnlyList<IsolationPlan> Isolation { get; init; } = [];

    /// <summary>One ladder an outlet, the one with the smallest margin first.</summary>
    public IReadOnlyList<LadderPlan> Ladders { get; init; } = [];

    /// <summary>Where each gain control may stand.</summary>
    public IReadOnlyList<GainWindow> Windows { get; init; } = [];

    /// <summary>Single changes that fix what falls short, best first; empty when nothing does.</summary>
    public IReadOnlyList<FixPlan> Fixes { get; init; } = [];

    /// <summary>Whether more changes could have been tried than the search allows.</summary>
    public bool TrialsCut { get; init; }

    /// <summary>Cable temperature of the levels that are not said to be hot or cold.</summary>
    public double ReferenceC { get; init; } = StepPlanner.ReferenceC;
}

/// <summary>One part in its place.</summary>
/// <param name="FromPort">Output of the feeding part; 0 when it has only one.</param>
/// <param name="SettingDb">Gain to set, or null.</param>
public sealed record ElementPlan(
    string Id, string Part, string Name, PartKind Kind, string Point, string From, int FromPort, string Run, string Serves,
        double? SettingDb)
{
    /// <summary>Combiner: what feeds its second input; empty for other parts.</summary>
    public string Second { get; init; } = "";

    /// <summary>Combiner: the run to its second input; empty when it is screwed on.</summary>
    public string SecondRun { get; init; } = "";

    /// <summary>Whether it is in the house already.</summary>
    public bool Existing { get; init; }

    /// <summary>What it is fixed to its place with; null when nobody says.</summary>
    public DeviceFixingPlan? Fixing { get; init; }

    /// <summary>Outputs that feed nothing, of a part with several.</summary>
    public IReadOnlyList<int> OpenPorts { get; init; } = [];
}

/// <summary>What a device is fixed with.</summary>
/// <param name="Part">Name in the library.</param>
/// <param name="Name">What to ask for in a shop.</param>
/// <param name="Count">How many.</param>
public sealed record DeviceFixingPlan(string Part, string Name, int Count);

/// <summary>One outlet.</summary>
/// <param name="Id">Its element.</param>
/// <param name="Serves">Room or set.</param>
/// <param name="Path">Elements from the antenna to it.</param>
/// <param name="CableM">Length of cable from the antenna to the receiver.</param>
/// <param name="Channels">Its channels, as the reception plan orders them.</param>
public sealed record OutletPlan(string Id, string Serves, IReadOnlyList<string> Path, double CableM, IReadOnlyList<OutletChannel> Channels)
{
    /// <summary>How much more the chain takes from the highest wanted channel than from the lowest; null without wanted channels.</summary>
    public double? TiltDb { get; init; }
}

/// <summary>One channel at one outlet, at the receiver's input.</summary>
/// <param name="Station">The station.</param>
/// <param name="LevelDbm">Level with cable at 20 C.</param>
/// <param name="LevelHotDbm">Level with hot cable.</param>
/// <param name="LevelColdDbm">Level with cold cable.</param>
/// <param name="NoiseFigureDb">Noise figure of the chain with the receiver, hot cable, referred to the antenna terminals.</param>
/// <param name="CnDb">C/N, hot cable.</param>
/// <param name="MarginDb">C/N above the required one, hot cable.</param>
/// <param name="ChancePct">Chance that the channel is there for the demanded share of the time, neither too weak nor too strong.</param>
/// <param name="ChanceWord"><c>firm</c> from 95 %, <c>fair</c> from 80 %, <c>doubtful</c> from 50 %, else <c>unlikely</c>.</param>
/// <param name="Verdict"><c>steady</c>, <c>thin</c>, <c>short</c> or <c>strong</c>.</param>
public sealed record OutletChannel(
    string Station, double LevelDbm, double LevelHotDbm, double LevelColdDbm, double NoiseFigureDb, double CnDb, double MarginDb,
        double ChancePct, string ChanceWord, string Verdict)
{
    /// <summary>How far the level may lie off because cable of unknown kind is in the way.</summary>
    public double UncertaintyDb { get; init; }

    /// <summary>Level with cold cable for the rest of the time: as strong as it may be.</summary>
    public double LevelStrongDbm { get; init; }

    /// <summary>Chance that it is more than the receiver takes; 0 where that is not known.</summary>
    public double TooStrongPct { get; init; }

    /// <summary>How the ground toward the station is known: the whole <c>path</c>, the <c>skyline</c> before the house alone, or <c>nothing</c>.</summary>
    public string Ground { get; init; } = "path";
}

/// <summary>What all stations together do to an amplifier, cold cable.</summary>
/// <param name="Amplifier">The amplifier.</param>
/// <param name="GainDb">Its gain.</param>
/// <param name="InputDbm">All carriers together at its input.</param>
/// <param name="OutputDbm">All carriers together at its output.</param>
/// <param name="LargestDbm">Largest total output; null when the part does not state it.</param>
/// <param name="ReserveDb">How far the output stays below that; null when unknown.</param>
/// <param name="Strongest">The strongest station.</param>
/// <param name="ProductsIn">The wanted station whose channel the intermodulation products come nearest; empty when none.</param>
/// <param name="ProductsDb">That channel over the products; null when the part states no intercept or no product falls into a wanted
/// channel.</param>
public sealed record AmplifierPlan(
    string Amplifier, double GainDb, double InputDbm, double OutputDbm, double? LargestDbm, double? ReserveDb, string Strongest,
        string ProductsIn, double? ProductsDb)
{
    // Farther below than this nobody would see them.
    private const double CloseDb = 60;

    /// <summary>Whether products come near enough to a wanted channel to be named.</summary>
    public bool ProductsClose => ProductsDb is < CloseDb;

    /// <summary>What falls into each channel.</summary>
    public IReadOnlyList<AmplifierProducts> Products { get; init; } = [];
}

/// <summary>A channel at the output of an amplifier, and the products that fall into it.</summary>
/// <param name="Station">The station.</param>
/// <param name="OwnDbm">The channel.</param>
/// <param name="ProductsDbm">The products.</param>
public sealed record AmplifierProducts(string Station, double OwnDbm, double ProductsDbm);

/// <summary>The entry of an internet service, which no step touches.</summary>
/// <param name="Kind">What it is.</param>
/// <param name="Over">What it uses in the house.</param>
/// <param name="Point">Where it sits; empty when not known.</param>
/// <param name="Feeds">What stays connected to it, in words; may be empty.</param>
/// <param name="Connected">Runs that stay connected to it.</param>
/// <param name="CutOff">Runs that come off it.</param>
/// <param name="OpenPorts">Ports of its splitter that stay open and get a terminator.</param>
public sealed record ServicePlan(ServiceUnit Kind, ServiceLine Over, string Point, string Feeds, IReadOnlyList<string> Connected,
    IReadOnlyList<string> CutOff, int OpenPorts)
{
    /// <summary>The plan; null without a service.</summary>
    internal static ServicePlan? Of(ServiceEntry? service)
    {
        if (service is null or { Unit: ServiceUnit.None }) return null;
        var coax = service.Over == ServiceLine.Coax;
        string[] off = coax ? [.. (service.CutOff ?? []).Select(r => r.Value)] : [];
        return new(service.Unit, service.Over, service.Point ?? "", service.Feeds ?? "", coax ? [.. service.Connected.Select(r => r.Value)] : [],
            off, coax ? service.OpenPorts ?? off.Length : 0);
    }
}

/// <summary>How an amplifier is fed through its cable.</summary>
/// <param name="Amplifier">The amplifier.</param>
/// <param name="Inserter">The power inserter that feeds it.</param>
/// <param name="SupplyV">Voltage of the supply.</param>
/// <param name="DrawsMa">Current of the amplifier; null when unknown.</param>
/// <param name="LoopOhm">Resistance of both conductors; null when a cable does not state it.</param>
/// <param name="ArrivesV">Voltage at the amplifier; null when it cannot be calculated.</param>
/// <param name="LeastV">Lowest voltage that it needs.</param>
/// <param name="Way">Elements from the amplifier to the inserter.</param>
public sealed record FeedPlan(string Amplifier, string Inserter, double SupplyV, double? DrawsMa, double? LoopOhm, double? ArrivesV,
    double LeastV, IReadOnlyList<string> Way)
{
    /// <summary>Whether cable of unknown kind lies on the way: then the resistance is the most that it may be, and the voltage the least.</summary>
    public bool OldCable { get; init; }

    /// <summary>Other amplifiers on the same inserter, whose currents share the cable as far as it is common.</summary>
    public IReadOnlyList<string> Others { get; init; } = [];

    /// <summary>Current of all amplifiers on the inserter; null when one of them does not state it.</summary>
    public double? TotalMa { get; init; }

    /// <summary>Largest current of the inserter; null when unknown.</summary>
    public double? LargestMa { get; init; }

    /// <summary>Steered ports on the way, each with the drop of one diode.</summary>
    public int SteeredPorts { get; init; }
}

/// <summary>The two outlets that are kept least from each other.</summary>
/// <param name="Between"><c>dwellings</c>: they lie in different ones; <c>outlets</c>: in the same.</param>
/// <param name="One">One outlet.</param>
/// <param name="Other">The other.</param>
/// <param name="IsolationDb">Isolation at the wanted channel where it is least, cold cable.</param>
/// <param name="RangeDb">What cable of unknown kind may lose less; taken off already.</param>
/// <param name="LeastDb">What the code family asks for.</param>
/// <param name="Document">Where it is written.</param>
/// <param name="Provenance">How that is known.</param>
public sealed record IsolationPlan(string Between, string One, string Other, double IsolationDb, double RangeDb, double LeastDb, string Document,
    string Provenance);

/// <summary>A station that nobody asked for.</summary>
/// <param name="Station">The station.</param>
/// <param name="Name">What the viewer calls it.</param>
/// <param name="ShowsAs">The number that the viewer sees.</param>
/// <param name="RfChannel">RF channel.</param>
/// <param name="MarginDb">Its largest margin over all outlets.</param>
/// <param name="ChancePct">Chance that it shows up there.</param>
public sealed record NotWantedChannel(string Station, string Name, string ShowsAs, int RfChannel, double MarginDb, double ChancePct);

/// <summary>A point where the crew measures.</summary>
/// <param name="Number">Its number.</param>
/// <param name="Element">At which element.</param>
/// <param name="Where">In words: at its input or at its output.</param>
/// <param name="Levels">Expected levels of the wanted channels, cable at 20 C.</param>
public sealed record TestPointPlan(int Number, string Element, string Where, IReadOnlyList<TestLevel> Levels);

/// <summary>An expected level.</summary>
public sealed record TestLevel(string Station, double LevelDbm);

/// <summary>The strongest and the weakest wanted channel on their way to one outlet.</summary>
/// <param name="Outlet">The outlet.</param>
/// <param name="LargestDbm">Highest level that the receiver takes; null when unknown.</param>
/// <param name="Lines">One line a channel.</param>
public sealed record LadderPlan(string Outlet, double? LargestDbm, IReadOnlyList<LadderLine> Lines)
{
    /// <summary>Name of the figure that shows it.</summary>
    public string Figure { get; init; } = "";

    /// <summary>The outlet whose figure shows it, when levels and steps differ too little for one of its own; else empty.</summary>
    public string SameAs { get; init; } = "";

    /// <summary>The line of the channel with the smallest margin; null when there is none.</summary>
    [System.Text.Json.Serialization.JsonIgnore]
    public LadderLine? Weakest => Lines.FirstOrDefault(l => l.Role == "weakest");
}

/// <summary>One channel on its way.</summary>
/// <param name="Station">The station.</param>
/// <param name="Role"><c>strongest</c> or <c>weakest</c>.</param>
/// <param name="MarginDb">Its margin at the outlet.</param>
/// <param name="Steps">Level behind each step.</param>
public sealed record LadderLine(string Station, string Role, double MarginDb, IReadOnlyList<LadderStep> Steps);

/// <summary>One step of the ladder.</summary>
/// <param name="Label">What the step is.</param>
/// <param name="GainDb">Its gain, or its loss as a negative number.</param>
/// <param name="LevelDbm">Level behind it.</param>
/// <param name="NoiseDbm">Noise in the channel there.</param>
/// <param name="CeilingDbm">Behind an amplifier: the level at which all stations together would reach its largest output; null elsewhere
/// or when unknown.</param>
public sealed record LadderStep(string Label, double GainDb, double LevelDbm, double NoiseDbm, double? CeilingDbm);
