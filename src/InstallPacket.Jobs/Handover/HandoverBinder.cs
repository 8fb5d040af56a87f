namespace InstallPacket.Jobs.Handover;

/// <summary>Turns the checked groups <c>prepared-by</c>, <c>customer</c> and <c>handover</c> into their records.</summary>
internal static class HandoverBinder
{
    public static Party Party(CheckedGroup g) => new(
        g.Get(PartyKeys.Name), g.Maybe(PartyKeys.Address)?.Value, g.Maybe(PartyKeys.Phone)?.Value, g.Maybe(PartyKeys.Note)?.Value)
    {
        Mail = g.Maybe(PartyKeys.Mail)?.Value, Licence = g.Maybe(PartyKeys.Licence)?.Value,
    };

    public static HandoverSection Section(CheckedGroup g) => new(g.Get(HandoverKeys.ExistingInternet), g.Maybe(HandoverKeys.Words)?.Value)
    {
        InternetSaid = g.Wrote(HandoverKeys.ExistingInternet) ? g.Maybe(HandoverKeys.ExistingInternet) : null,
        Warranty = g.Maybe(HandoverKeys.Warranty)?.Value,
    };
}
