using InstallPacket.Calc.Sources;

namespace InstallPacket.Plans;

/// <summary>Provenance as the packet prints it.</summary>
public static class ProvenanceWord
{
    /// <summary>The word for a mark.</summary>
    public static string Of(Provenance provenance) => provenance switch
    {
        Provenance.Read => "read",
        Provenance.Derived => "derived",
        Provenance.CommonPractice => "common practice",
        _ => "memory",
    };
}
