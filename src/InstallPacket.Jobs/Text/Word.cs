namespace InstallPacket.Jobs.Text;

/// <summary>
/// The words of closed sets, as files and plans write them: the member's name in kebab case. The only place that turns the one into the
/// other.
/// </summary>
public static class Word
{
    // Words that a rule of the trade spells in another way.
    private static readonly Dictionary<string, string> Spelled = new(StringComparer.Ordinal)
    {
        ["A4"] = "a4", ["DBuV"] = "dBuV", ["DBmV"] = "dBmV", ["DBm"] = "dBm", ["FlyLead"] = "fly lead",
    };

    /// <summary>The word of a member.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The value is no member of the set.</exception>
    public static string Of<T>(T member) where T : struct, Enum
    {
        var at = Array.IndexOf(Set<T>.Members, member);
        return at >= 0 ? Set<T>.Words[at] : throw new ArgumentOutOfRangeException(nameof(member), member, "No member of the set.");
    }

    /// <summary>The member of a word; null when the set has no such word.</summary>
    public static T? Read<T>(string word) where T : struct, Enum
    {
        var at = Array.IndexOf(Set<T>.Words, word);
        return at >= 0 ? Set<T>.Members[at] : null;
    }

    /// <summary>All words of a set, in the order of its members.</summary>
    public static IReadOnlyList<string> All<T>() where T : struct, Enum => Set<T>.Words;

    private static string Kebab(string name)
    {
        if (Spelled.TryGetValue(name, out var word)) return word;
        var text = new System.Text.StringBuilder();
        for (var i = 0; i < name.Length; i++)
        {
            var begins = char.IsAsciiLetterUpper(name[i]) || (char.IsAsciiDigit(name[i]) && !char.IsAsciiDigit(name[i - 1]));
            if (i > 0 && begins) text.Append('-');
            text.Append(char.ToLowerInvariant(name[i]));
        }
        return text.ToString();
    }

    private static class Set<T> where T : struct, Enum
    {
        public static readonly T[] Members = Enum.GetValues<T>();

        public static readonly string[] Words = [.. Members.Select(m => Kebab(m.ToString()))];
    }
}
