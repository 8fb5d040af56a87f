using InstallPacket.Calc.Quantities;

namespace InstallPacket.Jobs.Cabling;

/// <summary>Turns the checked group <c>cabling</c> into its record.</summary>
internal sealed class CablingBinder(PartLibrary parts)
{
    public CablingSection Section(CheckedGroup g)
    {
        var t = g.Get(CablingKeys.Temperature);
        return new(
            parts.Get<ReceiverPart>(g.Get(CablingKeys.Receiver)), parts.Get<CablePart>(g.Get(CablingKeys.FlyCable)),
                t.Get(TemperatureKeys.Cold),
            t.Get(TemperatureKeys.Hot), [.. g.Entries(CablingKeys.Chain).Select(Element)], g.At)
        {
            ChainAt = g.Place(CablingKeys.Chain),
            AlsoCarries = g.Items(CablingKeys.AlsoCarries),
            Internet = g.Maybe(CablingKeys.Internet) is { } service ? Service(service.Value) : null,
        };
    }

    private static ServiceEntry Service(CheckedGroup g) => new(
        g.Get(ServiceKeys.Kind), g.Get(ServiceKeys.Over), g.Maybe(ServiceKeys.At)?.Value, g.Maybe(ServiceKeys.Feeds)?.Value,
        g.Items(ServiceKeys.Connected), g.Maybe(ServiceKeys.CutOff)?.Value, g.Maybe(ServiceKeys.OpenPorts)?.Value, g.At);

    // The job goes before the part; what hangs there already needs no fixing.
    private ElementFixing? FixedWith(CheckedGroup g)
    {
        var with = g.Maybe(ElementKeys.Fixings) is { } own ? new DeviceFixing(own.Value)
            : parts.Get<ChainPart>(g.Get(ElementKeys.Part)).FixesWith;
        return with is { Count: > 0 } && !g.Get(ElementKeys.Existing) ? new(parts.Get<FixingPart>(with.Part), with.Count) : null;
    }

    private Element Element(Entry<CheckedGroup> e)
    {
        var g = e.Value;
        var (second, secondPort) = g.Maybe(ElementKeys.Second) is { } s2 ? ElementName.Split(s2.Value) : (null, 1);
        var (from, port) = g.Maybe(ElementKeys.From) is { } f ? ElementName.Split(f.Value) : (null, 1);
        return new(
            e.Name, parts.Get<ChainPart>(g.Get(ElementKeys.Part)), g.Get(ElementKeys.At), from, port, g.Maybe(ElementKeys.Run)?.Value,
            g.Maybe(ElementKeys.Setting) is { } s ? Gain.FromDb(s.Value) : null, g.Maybe(ElementKeys.Serves)?.Value,
                g.Metres(ElementKeys.FlyLead), e.At)
        {
            Second = second, SecondPort = secondPort, SecondRun = g.Maybe(ElementKeys.SecondRun)?.Value,
                SecondAt = g.Place(ElementKeys.Second),
            Aim = g.Maybe(ElementKeys.Aim), FromAt = g.Place(ElementKeys.From), RunAt = g.Place(ElementKeys.Run),
                SettingAt = g.Place(ElementKeys.Setting), Existing = g.Get(ElementKeys.Existing),
            FixedWith = FixedWith(g), Dwelling = g.Maybe(ElementKeys.Dwelling)?.Value,
        };
    }
}
