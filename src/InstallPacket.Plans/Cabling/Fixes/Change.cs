namespace InstallPacket.Plans.Cabling.Fixes;

/// <summary>What a trial changes: its id in the section <c>fixes</c> of the words and the values that the text names.</summary>
/// <param name="Id">The kind of change.</param>
internal sealed record Change(string Id)
{
    public string Element { get; init; } = "";

    public string Run { get; init; } = "";

    public string Part { get; init; } = "";

    public string Inserter { get; init; } = "";

    public double? SetDb { get; init; }

    public double? BearingDeg { get; init; }

    public double? RaiseM { get; init; }

    /// <summary>The order in which an installer would try what mends as much: what takes away first, what only adds last.</summary>
    public int Rank => Array.IndexOf(Order, Id);

    private static readonly string[] Order =
        ["leave-out", "set", "turn", "raise", "exchange", "cable", "move-to-antenna", "add-at-antenna", "put-before"];

    /// <summary>Raise the antenna.</summary>
    public static Change Raise(double metres) => new("raise") { RaiseM = metres };

    /// <summary>Turn the antenna.</summary>
    public static Change Turn(double bearingDeg) => new("turn") { BearingDeg = bearingDeg };

    /// <summary>Set the control of an amplifier.</summary>
    public static Change Set(string element, double db) => new("set") { Element = element, SetDb = db };

    /// <summary>Take another part for an element.</summary>
    public static Change Exchange(string element, string part) => new("exchange") { Element = element, Part = part };

    /// <summary>Leave an element out.</summary>
    public static Change LeaveOut(string element) => new("leave-out") { Element = element };

    /// <summary>Take another cable for a run.</summary>
    public static Change Cable(string run, string part) => new("cable") { Run = run, Part = part };

    /// <summary>Put a part in front of an element.</summary>
    public static Change PutBefore(string element, string part) => new("put-before") { Element = element, Part = part };

    /// <summary>Add an amplifier at the antenna, and its inserter.</summary>
    public static Change Add(string part, string inserter) => new("add-at-antenna") { Part = part, Inserter = inserter };

    /// <summary>Take an amplifier at the antenna and its inserter in place of an element.</summary>
    public static Change Move(string element, string part, string inserter) =>
        new("move-to-antenna") { Element = element, Part = part, Inserter = inserter };
}
