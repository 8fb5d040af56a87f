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

/// <summary>Something the author should know.</summary>
/// <param name="Severity">How much it matters.</param>
/// <param name="Id">Readable identifier in kebab-case; <c>installpacket explain ID</c> tells more.</param>
/// <param name="At">Where in the author's files.</param>
/// <param name="Found">What was found, with its value and unit.</param>
/// <param name="Limit">The limit or the expectation, with its source; may be empty.</param>
/// <param name="Remedy">What to do.</param>
public sealed record Finding(Severity Severity, string Id, SourceSpan At, string Found, string Limit, string Remedy);

/// <summary>Collects findings, so that one run reports everything.</summary>
public sealed class FindingList
{
    private readonly List<Finding> _all = [];

    /// <summary>All findings, by file, line, column, then identifier.</summary>
    public IReadOnlyList<Finding> Sorted =>
    [
        .. _all.Distinct()
            .OrderBy(f => f.At.File, StringComparer.Ordinal).ThenBy(f => f.At.Line).ThenBy(f => f.At.Column)
            .ThenBy(f => f.Id, StringComparer.Ordinal).ThenBy(f => f.Found, StringComparer.Ordinal),
    ];

    /// <summary>Whether any finding stops the job.</summary>
    public bool AnyStop => _all.Exists(f => f.Severity == Severity.Stop);

    /// <summary>Adds one.</summary>
    public void Add(Severity severity, string id, SourceSpan at, string found, string limit, string remedy) =>
        _all.Add(new Finding(severity, id, at, found, limit, remedy));

    /// <summary>Adds many.</summary>
    public void AddRange(IEnumerable<Finding> findings) => _all.AddRange(findings);
}
