namespace InstallPacket.Plans.Cabling;

/// <summary>Outputs that feed nothing and need a terminator.</summary>
internal static class OpenOutputs
{
    /// <summary>Their numbers; of an outlet that passes on, its way on counts too, though it is its only output.</summary>
    public static IReadOnlyList<int> Of(Element e, ChainView chain)
    {
        var outputs = e.Part is OutletPart outlet ? outlet.PortLossesDb.Count : e.Part.Outputs > 1 ? e.Part.Outputs : 0;
        return outputs == 0 ? [] : [.. Enumerable.Range(1, outputs).Except(chain.Feeds(e).Select(f => f.Port))];
    }
}
