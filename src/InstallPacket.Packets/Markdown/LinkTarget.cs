namespace InstallPacket.Packets.Markdown;

/// <summary>Which places a packet may link to: the web, a mail address, a place in the page, a file beside it.</summary>
public static class LinkTarget
{
    private static readonly string[] Schemes = ["http:", "https:", "mailto:"];

    /// <summary>Whether a link may point there.</summary>
    /// <param name="target">The address as written.</param>
    public static bool IsAllowed(string? target)
    {
        // Browsers drop tabs and line ends inside a scheme and read a backslash as a slash, so neither may stand in an address.
        if (string.IsNullOrEmpty(target) || target.Any(c => char.IsControl(c) || char.IsWhiteSpace(c) || c == '\\')) return false;
        if (target[0] == '#') return true;
        if (IsWeb(target)) return true;
        var path = Uri.UnescapeDataString(target.Split('#', '?')[0]);
        return path.Length > 0 && path[0] != '/' && !path.Contains(':', StringComparison.Ordinal)
            && !path.Contains('\\', StringComparison.Ordinal) && !path.Split('/').Contains("..");
    }

    /// <summary>Whether the target is an address outside the packet.</summary>
    /// <param name="target">The address as written.</param>
    public static bool IsWeb(string target) =>
        Schemes.Any(s => target.StartsWith(s, StringComparison.OrdinalIgnoreCase) && target.Length > s.Length);
}
