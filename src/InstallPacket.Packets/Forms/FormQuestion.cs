namespace InstallPacket.Packets.Forms;

/// <summary>How a question is answered where the kind of its key does not say it.</summary>
internal enum FormShape
{
    /// <summary>As the kind of the key says.</summary>
    Key,

    /// <summary>Latitude and longitude on one line.</summary>
    Coordinates,

    /// <summary>A place on an outer wall.</summary>
    WallPlace,

    /// <summary>Some of the stations.</summary>
    Stations,

    /// <summary>A kit of the folder or a part.</summary>
    KitOrPart,

    /// <summary>A kit that gives the mount.</summary>
    MountKit,

    /// <summary>Kits that need no value.</summary>
    MoreKits,

    /// <summary>Any number of things, each with questions of its own.</summary>
    List,

    /// <summary>Such things, or the word that there are none.</summary>
    ListOrNone,

    /// <summary>Yes or no.</summary>
    YesNo,

    /// <summary>A line of text that has no key of its own.</summary>
    Text,

    /// <summary>Yes or no without a key: whether the questions behind it are asked.</summary>
    Gate,

    /// <summary>Whether the house is a box.</summary>
    HouseForm,

    /// <summary>Which way the wall turns at its end.</summary>
    Corner,
}

/// <summary>A question of the survey form. What it holds, its range and its reason are those of its key.</summary>
/// <param name="Id">Its name on the page; its text stands below <c>form.ask</c> in the words.</param>
/// <param name="Path">The key that it answers, with <c>NAME</c> for what the author names; empty for none.</param>
internal sealed record FormQuestion(string Id, string Path)
{
    /// <summary>How it is answered.</summary>
    public FormShape Shape { get; init; }

    /// <summary>Whether a packet cannot be planned without it.</summary>
    public bool Needed { get; init; }

    /// <summary>Whether "not known" is an answer.</summary>
    public bool MayBeUnknown { get; init; }

    /// <summary>
    /// What must be answered elsewhere so that it is asked: terms <c>ID=a|b</c> or <c>ID!=a</c>, all of which hold; empty for always.
    /// </summary>
    public string When { get; init; } = "";

    /// <summary>
    /// What must be answered elsewhere so that a packet cannot be planned without it; empty when <see cref="Needed"/> says it.
    /// </summary>
    public string NeededWhen { get; init; } = "";

    /// <summary>Whether its answer goes to the job under its key as it is; otherwise the script puts the answers together.</summary>
    public bool Plain { get; init; } = true;

    /// <summary>The kinds of parts to choose from, where the key takes any.</summary>
    public IReadOnlyList<PartKind> Parts { get; init; } = [];

    /// <summary>Whether of bonding parts only those with a length are offered, which are rods.</summary>
    public bool Rods { get; init; }

    /// <summary>The questions of each thing of a list.</summary>
    public IReadOnlyList<FormQuestion> Each { get; init; } = [];
}

/// <summary>A part of the walk around the house.</summary>
/// <param name="Id">Its name on the page; its title and its lead stand below <c>form.sections</c> in the words.</param>
internal sealed record FormSection(string Id, IReadOnlyList<FormQuestion> Questions);
