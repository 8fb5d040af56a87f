namespace InstallPacket.Calc.Sources;

/// <summary>Provenance as files write it and packets print it.</summary>
public static class ProvenanceWord
{
    /// <summary>All words, the best first.</summary>
    public static IReadOnlyList<string> All { get; } = [.. Enum.GetValues<Provenance>().Select(Of)];

    /// <summary>The word for a mark.</summary>
    public static string Of(Provenance provenance) => provenance switch
    {
        Provenance.Read => "read",
        Provenance.Derived => "derived",
        Provenance.CommonPractice => "common practice",
        Provenance.Memory => "memory",
    };

    /// <summary>The mark of a word; null when it is none.</summary>
    public static Provenance? Read(string word) =>
        Enum.GetValues<Provenance>().Where(p => Of(p) == word).Select(p => (Provenance?)p).FirstOrDefault();
}
