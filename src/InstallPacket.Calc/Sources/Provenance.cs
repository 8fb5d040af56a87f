namespace InstallPacket.Calc.Sources;

/// <summary>How well a fact or an equation is known. Only <see cref="Read"/> may be called published.</summary>
public enum Provenance
{
    /// <summary>Seen in the document that the source register names.</summary>
    Read,

    /// <summary>Arithmetic from other values; good for checking arithmetic, no authority of its own.</summary>
    Derived,

    /// <summary>A habit of the trade without a published source.</summary>
    CommonPractice,

    /// <summary>Recalled, not looked up. Printed with the word "verify".</summary>
    Memory,
}
