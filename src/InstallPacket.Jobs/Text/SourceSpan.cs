namespace InstallPacket.Jobs.Text;

/// <summary>A place in a file of the author.</summary>
/// <param name="File">Path below the jobs folder, with forward slashes.</param>
/// <param name="Line">Line, counted from 1; 0 when the finding is about the whole file.</param>
/// <param name="Column">Column, counted from 1.</param>
public readonly record struct SourceSpan(string File, int Line, int Column)
{
    /// <inheritdoc/>
    public override string ToString() => Line == 0 ? File : $"{File}({Line},{Column})";
}

/// <summary>A value together with the place where the author wrote it.</summary>
/// <param name="Value">The value.</param>
/// <param name="At">Where it stands; for a default, where the key would stand.</param>
public readonly record struct Sourced<T>(T Value, SourceSpan At);
