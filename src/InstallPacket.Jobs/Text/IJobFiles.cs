namespace InstallPacket.Jobs.Text;

/// <summary>What came of asking for a file.</summary>
public enum FileState
{
    /// <summary>Here it is.</summary>
    Present,

    /// <summary>There is none.</summary>
    Absent,

    /// <summary>Larger than the bound; not read.</summary>
    TooLarge,

    /// <summary>Not UTF-8 text.</summary>
    NotText,

    /// <summary>Leads out of the jobs folder (through a link); not read.</summary>
    Outside,
}

/// <summary>A file of the author.</summary>
/// <param name="Path">Path below the jobs folder, with forward slashes.</param>
/// <param name="State">What came of asking.</param>
/// <param name="Text">Its text when present, otherwise empty.</param>
public sealed record JobFile(string Path, FileState State, string Text);

/// <summary>The author's files as the reader sees them: the folder of today, or a revision of it.</summary>
public interface IJobFiles : ITileFiles
{
    /// <summary>Reads a text file; never throws for what an author can do.</summary>
    /// <param name="path">Path below the jobs folder, with forward slashes.</param>
    /// <param name="maxBytes">Largest size that is read.</param>
    JobFile Read(string path, int maxBytes);
}
