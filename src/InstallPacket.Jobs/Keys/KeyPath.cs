using System.Text.RegularExpressions;

namespace InstallPacket.Jobs.Keys;

/// <summary>Key paths as printed.</summary>
public static partial class KeyPath
{
    /// <summary>A path without list positions: <c>routing.runs.R1.path[2]</c> becomes <c>routing.runs.R1.path</c>.</summary>
    public static string Plain(string path) => Positions().Replace(path, "");

    [GeneratedRegex(@"\[[^\]]*\]")]
    private static partial Regex Positions();
}
