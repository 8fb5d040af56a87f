namespace InstallPacket.Calc.Sources;

/// <summary>Reads the provenance marks of embedded tables.</summary>
public static class CsvProvenance
{
    /// <summary>The mark in a cell; an unknown mark is a broken table and throws.</summary>
    public static Provenance Of(string text) => text switch
    {
        "read" => Provenance.Read,
        "derived" or "computed" => Provenance.Derived,
        "memory" => Provenance.Memory,
        _ => throw new FormatException($"Unknown provenance mark '{text}'."),
    };
}
