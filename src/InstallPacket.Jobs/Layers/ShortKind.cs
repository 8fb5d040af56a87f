namespace InstallPacket.Jobs.Layers;

/// <summary>What may be written in a shorter or another form, which is spelled out before the keys are checked.</summary>
public interface IShortKind
{
    /// <summary>The form that the reader knows.</summary>
    KeyKind Full { get; }

    /// <summary>The other form.</summary>
    KeyKind Other { get; }
}

/// <summary>Such a kind.</summary>
/// <typeparam name="T">What its values become.</typeparam>
internal sealed record ShortKind<T>(KeyKind<T> Full, KeyKind Other) : KeyKind<T>, IShortKind
{
    KeyKind IShortKind.Full => Full;
}
