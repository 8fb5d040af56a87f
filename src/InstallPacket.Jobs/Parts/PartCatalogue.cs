namespace InstallPacket.Jobs.Parts;

/// <summary>The kinds of part: the keys of each and what it becomes.</summary>
public static class PartCatalogue
{
    /// <summary>The keys of one part; which of them a part has, its <c>kind</c> decides.</summary>
    public static readonly PartGroupKind Part = new();

    private static readonly MapKind<CheckedGroup> Named = new(Part, "part", 1, 2000);

    private static readonly KeyList Keys = new();

    /// <summary>The parts of a parts file.</summary>
    internal static readonly Key<IReadOnlyList<Entry<CheckedGroup>>> Parts = Keys.Required("parts", Named, "The parts.");

    /// <summary>A parts file: a map from part names to parts.</summary>
    internal static GroupKind File => Keys.Group;

    /// <summary>The keys of a kind of part.</summary>
    public static GroupKind KeysOf(PartKind kind) => kind switch
    {
        PartKind.Antenna => AntennaPartKeys.Group,
        PartKind.Balun => BalunPartKeys.Group,
        PartKind.Filter => FilterPartKeys.Group,
        PartKind.Attenuator => AttenuatorPartKeys.Group,
        PartKind.Amplifier => AmplifierPartKeys.Group,
        PartKind.PowerInserter => PowerInserterPartKeys.Group,
        PartKind.GroundingBlock => GroundingBlockPartKeys.Group,
        PartKind.SurgeProtector => SurgeProtectorPartKeys.Group,
        PartKind.Combiner => CombinerPartKeys.Group,
        PartKind.Splitter => SplitterPartKeys.Group,
        PartKind.Tap => TapPartKeys.Group,
        PartKind.Outlet => OutletPartKeys.Group,
        PartKind.Receiver => ReceiverPartKeys.Group,
        PartKind.Cable => CablePartKeys.Group,
        PartKind.Connector => ConnectorPartKeys.Group,
        PartKind.Terminator => TerminatorPartKeys.Group,
        PartKind.Mount => MountPartKeys.Group,
        PartKind.Mast => MastPartKeys.Group,
        PartKind.Guy => GuyPartKeys.Group,
        PartKind.Fixing => FixingPartKeys.Group,
        PartKind.Bonding => BondingPartKeys.Group,
        PartKind.Sundry => SundryPartKeys.Group,
    };

    /// <summary>The part that an entry describes.</summary>
    internal static Part Bind(Entry<CheckedGroup> entry) => entry.Value.Get(PartKeys.Kind) switch
    {
        PartKind.Antenna => new AntennaPart(entry),
        PartKind.Balun => new BalunPart(entry),
        PartKind.Filter => new FilterPart(entry),
        PartKind.Attenuator => new AttenuatorPart(entry),
        PartKind.Amplifier => new AmplifierPart(entry),
        PartKind.PowerInserter => new PowerInserterPart(entry),
        PartKind.GroundingBlock => new GroundingBlockPart(entry),
        PartKind.SurgeProtector => new SurgeProtectorPart(entry),
        PartKind.Combiner => new CombinerPart(entry),
        PartKind.Splitter => new SplitterPart(entry),
        PartKind.Tap => new TapPart(entry),
        PartKind.Outlet => new OutletPart(entry),
        PartKind.Receiver => new ReceiverPart(entry),
        PartKind.Cable => new CablePart(entry),
        PartKind.Connector => new ConnectorPart(entry),
        PartKind.Terminator => new TerminatorPart(entry),
        PartKind.Mount => new MountPart(entry),
        PartKind.Mast => new MastPart(entry),
        PartKind.Guy => new GuyPart(entry),
        PartKind.Fixing => new FixingPart(entry),
        PartKind.Bonding => new BondingPart(entry),
        PartKind.Sundry => new SundryPart(entry),
    };

    /// <summary>The figures of a kind of part: each needs a word on how it is known.</summary>
    internal static IEnumerable<Key> Figures(PartKind kind) =>
        KeysOf(kind).Keys.Where(k => k.Kind is QuantityKind or CurveKind or IListKind or GroupKind && k != ChainKeys.FixesWith);
}

/// <summary>The keys of a part: all of them as long as its kind is not known, otherwise those of its kind.</summary>
public sealed record PartGroupKind() : GroupKind([.. Enum.GetValues<PartKind>().SelectMany(k => PartCatalogue.KeysOf(k).Keys).Distinct()])
{
    /// <inheritdoc/>
    public override GroupKind For(Func<Key, string?> word) =>
        word(PartKeys.Kind) is { } written && Word.Read<PartKind>(written) is { } kind ? new OfKind(kind) : this;

    /// <summary>The keys of one kind, which knows the keys of the others.</summary>
    private sealed record OfKind(PartKind Kind) : GroupKind(PartCatalogue.KeysOf(Kind).Keys)
    {
        public override IReadOnlyList<string> Elsewhere(string key) =>
            [.. Enum.GetValues<PartKind>().Where(k => PartCatalogue.KeysOf(k).Keys.Any(other => other.Name == key)).Select(Word.Of)];
    }
}
