namespace InstallPacket.Jobs.Codes;

/// <summary>What a job of a code family takes where it says nothing itself. One line a family.</summary>
/// <param name="Id">The word in the job file.</param>
/// <param name="Units">Units of the packet.</param>
/// <param name="Paper">Paper of the PDF.</param>
/// <param name="Language">Language of the packet, as the name of its file in the theme's <c>words</c> folder.</param>
public sealed record CodeDefaults(string Id, UnitFamily Units, PaperSize Paper, string Language)
{
    /// <summary>United States practice.</summary>
    public static readonly CodeDefaults Us = new("us", UnitFamily.Us, PaperSize.Letter, "en-US");

    /// <summary>European practice.</summary>
    public static readonly CodeDefaults Eu = new("eu", UnitFamily.Metric, PaperSize.A4, "en-GB");

    /// <summary>The families of this program.</summary>
    public static IReadOnlyList<CodeDefaults> BuiltIn { get; } = [Us, Eu];
}
