namespace InstallPacket.Packets.Templates;

/// <summary>A template asked for a value that the model does not have; caught and given its place by the renderer.</summary>
/// <param name="name">The member asked for.</param>
/// <param name="path">Its full path in the model.</param>
/// <param name="known">The names that stand there instead.</param>
internal sealed class UnknownNameException(string name, string path, IEnumerable<string> known)
    : Exception($"unknown value '{path}'; {Known([.. known.Order(StringComparer.Ordinal)])}")
{
    public string Name { get; } = name;

    private static string Known(string[] names) => names.Length == 0 ? "the value before it is empty" : "known here: "
        + string.Join(", ", names);
}
