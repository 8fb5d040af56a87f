namespace InstallPacket.Plans.Codes;

/// <summary>The code families that jobs may name.</summary>
/// <param name="all">The families; each has a word of its own.</param>
public sealed class CodeFamilies(params IReadOnlyList<CodeFamily> all)
{
    /// <summary>The families of this program.</summary>
    public static CodeFamilies BuiltIn { get; } = new(new Us.UsCodeFamily(), new Eu.EuCodeFamily());

    /// <summary>All of them.</summary>
    public IReadOnlyList<CodeFamily> All { get; } = all;

    /// <summary>What jobs of each family take where they say nothing, for the reader of jobs.</summary>
    public IReadOnlyList<CodeDefaults> Defaults => [.. All.Select(f => f.Defaults)];

    /// <summary>The family with this word.</summary>
    /// <exception cref="ArgumentOutOfRangeException">There is none; the reader of jobs lets no such word through.</exception>
    public CodeFamily Of(string id) =>
        All.FirstOrDefault(f => f.Id == id) ?? throw new ArgumentOutOfRangeException(nameof(id), id, "No such code family.");
}
