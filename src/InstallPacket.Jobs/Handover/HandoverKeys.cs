namespace InstallPacket.Jobs.Handover;

/// <summary>The keys of <c>prepared-by</c> and <c>customer</c>.</summary>
internal static class PartyKeys
{
    private static readonly KeyList Keys = new();

    public static readonly Key<string> Name = Keys.Required("name", new TextKind(80), "Name.");

    public static readonly Key<string> Address = Keys.Optional("address", new TextKind(200), "Address.");

    public static readonly Key<string> Phone = Keys.Optional("phone", new TextKind(40), "Telephone.");

    public static readonly Key<string> Mail = Keys.Optional("mail", new TextKind(80), "Mail address.");

    public static readonly Key<string> Licence = Keys.Optional("licence", new TextKind(80), "Firm: licence or registration, as the customer may check it.");

    public static readonly Key<string> Logo = Keys.Optional("logo", new TextKind(80),
        "Firm: its logo for the customer's pages, a PNG file below `_shared` of at most 256 KiB and 2000 points a side.");

    public static readonly Key<string> Note = Keys.Optional("note", new TextKind(300), "Anything to know.");

    public static GroupKind Group => Keys.Group;
}

/// <summary>The keys of <c>prepared-by</c>, <c>customer</c> and <c>handover</c>.</summary>
internal static class HandoverKeys
{
    private static readonly KeyList Keys = new();

    public static readonly Key<InternetKind> ExistingInternet = Keys.Default(
        "existing-internet", new WordKind<InternetKind>(), "Whether an internet service uses coax in this house; `cabling.internet` says more and goes before it.", "none");

    public static readonly Key<string> Warranty = Keys.Optional(
        "warranty", new TextKind(1200), "What the firm promises and for how long, and its terms; for the customer.");

    public static readonly Key<string> Words = Keys.Optional("words", new TextKind(600), "A word to the customer.");

    public static GroupKind Group => Keys.Group;
}
