namespace InstallPacket.Jobs.Findings;

/// <summary>How much a finding matters.</summary>
public enum Severity
{
    /// <summary>Worth knowing.</summary>
    Note,

    /// <summary>Look at it before going.</summary>
    Caution,

    /// <summary>Must not be installed as planned; or the job could not be read.</summary>
    Stop,
}

/// <summary>Something the author should know. Its texts stand in the words, below <c>findings.ID</c> or <c>findings.ID.CASE</c>.</summary>
/// <param name="Severity">How much it matters.</param>
/// <param name="Id">Readable identifier in kebab-case; <c>installpacket explain ID</c> says more.</param>
/// <param name="Case">Which of several ways of saying it, in kebab-case; empty when there is one.</param>
/// <param name="At">Where in the author's files.</param>
/// <param name="Values">What its texts name.</param>
public sealed record Finding(Severity Severity, string Id, string Case, SourceSpan At, FindingValues Values);

/// <summary>Collects findings, so that one run reports everything.</summary>
public sealed class FindingList
{
    private readonly List<Finding> _all = [];

    /// <summary>All findings, by file, line, column, identifier, then case and values.</summary>
    public IReadOnlyList<Finding> Sorted =>
    [
        .. _all.Distinct()
            .OrderBy(f => f.At.File, StringComparer.Ordinal).ThenBy(f => f.At.Line).ThenBy(f => f.At.Column)
            .ThenBy(f => f.Id, StringComparer.Ordinal).ThenBy(f => f.Case, StringComparer.Ordinal).ThenBy(f => f.Values.ToString(),
                StringComparer.Ordinal),
    ];

    /// <summary>Whether any finding stops the job.</summary>
    public bool AnyStop => _all.Exists(f => f.Severity == Severity.Stop);

    /// <summary>Adds one that is said in one way.</summary>
    /// <param name="severity">How much it matters.</param>
    /// <param name="id">Its identifier.</param>
    /// <param name="at">Where.</param>
    /// <param name="values">What its texts name.</param>
    public void Add(Severity severity, string id, SourceSpan at, params ReadOnlySpan<(string Name, object? Value)> values) =>
        _all.Add(new Finding(severity, id, "", at, new(values)));

    /// <summary>Adds one that is said in several ways.</summary>
    /// <param name="severity">How much it matters.</param>
    /// <param name="id">Its identifier.</param>
    /// <param name="way">Its case.</param>
    /// <param name="at">Where.</param>
    /// <param name="values">What its texts name.</param>
    public void Add(Severity severity, string id, string way, SourceSpan at, params ReadOnlySpan<(string Name, object? Value)> values) =>
        _all.Add(new Finding(severity, id, way, at, new(values)));

    /// <summary>Adds many.</summary>
    public void AddRange(IEnumerable<Finding> findings) => _all.AddRange(findings);
}
