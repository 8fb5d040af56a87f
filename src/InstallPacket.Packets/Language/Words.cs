using InstallPacket.Jobs;

namespace InstallPacket.Packets.Language;

/// <summary>The texts of one language: those of the file it is based on, those of its own file, and over both those of a firm's
/// theme.</summary>
public sealed class Words
{
    /// <summary>The section in which a firm's theme adds texts of its own.</summary>
    public const string OwnSection = "own.";

    private readonly Dictionary<string, WordText> _texts = new(StringComparer.Ordinal);

    /// <summary>Loads a language.</summary>
    /// <param name="language">BCP 47 tag, which is the name of the file.</param>
    /// <param name="files">The files of a language, the theme's before the firm's own.</param>
    /// <param name="languages">The languages that have files, for messages.</param>
    /// <exception cref="DocumentException">There is no such language, or a file has a mistake.</exception>
    internal Words(string language, Func<string, IReadOnlyList<(string Path, byte[] Bytes)>> files, IReadOnlyList<string> languages)
    {
        Language = language;
        Load(language, files, languages, []);
        Numbers = NumbersOf();
    }

    /// <summary>BCP 47 tag.</summary>
    public string Language { get; }

    /// <summary>Signs and unit words for numbers.</summary>
    public NumberWords Numbers { get; }

    /// <summary>Every id, in order.</summary>
    public IEnumerable<string> Ids => _texts.Keys.Order(StringComparer.Ordinal);

    /// <summary>The text as written in the file, Liquid and all.</summary>
    /// <param name="id">Its id.</param>
    public string Written(string id) => Text(id).Written;

    /// <summary>Whether there is a text with this id.</summary>
    /// <param name="id">The id.</param>
    public bool Has(string id) => _texts.ContainsKey(id);

    /// <summary>A text that names no value.</summary>
    /// <param name="id">Its id.</param>
    /// <exception cref="WordsException">There is none, or it names a value.</exception>
    public string Plain(string id)
    {
        var text = Text(id);
        return text.Plain ?? throw new WordsException(text.At, $"'{id}' must not name a value");
    }

    /// <summary>Parses every text, so that a mistake shows before it is spoken.</summary>
    /// <exception cref="WordsException">A text is not Liquid.</exception>
    public void Check()
    {
        foreach (var text in _texts.Values)
            if (text.Plain is null) _ = text.Template;
    }

    internal WordText Text(string id) => _texts.TryGetValue(id, out var text) ? text
        : throw WordsException.NoText(id, Language, _texts.Keys);

    private void Load(string language, Func<string, IReadOnlyList<(string Path, byte[] Bytes)>> files, IReadOnlyList<string> languages,
        List<string> above)
    {
        if (above.Contains(language)) throw new DocumentException($"the languages {string.Join(", ", above)} are based on one another in a ring");
        var found = files(language);
        if (found.Count == 0)
            throw new DocumentException($"the theme has no words for the language '{language}'; it has {string.Join(", ", languages)}");
        var read = found.Select(f => WordsFile.Read(f.Path, f.Bytes)).ToList();
        var basedOn = read.Select(f => f.BasedOn).FirstOrDefault(b => b is not null);
        if (basedOn is not null) Load(basedOn, files, languages, [.. above, language]);
        for (var i = 0; i < read.Count; i++) Lay(read[i], free: i == 0 && basedOn is null);
    }

    // A text over others replaces one of them: a new id there is a slip of the pen, and would never be spoken.
    private void Lay(WordsFile file, bool free)
    {
        foreach (var (id, text) in file.Texts)
        {
            if (!free && !_texts.ContainsKey(id) && !IsFree(id))
                throw new WordsException(text.At,
                    $"there is no text '{id}' to replace{WordsFile.Near(id, _texts.Keys)}; new texts go below '{OwnSection.TrimEnd('.')}'");
            _texts[id] = text;
        }
    }

    // Texts of formulas stand beside the formulas; a language adds its own.
    private static bool IsFree(string id) => id.StartsWith(OwnSection, StringComparison.Ordinal)
        || id.StartsWith(FormulaWords.Section, StringComparison.Ordinal);

    private NumberWords NumbersOf() => new()
    {
        Decimal = Plain("numbers.decimal"),
        Minus = Plain("numbers.minus"),
        Unknown = Plain("numbers.unknown"),
        Over99 = Plain("numbers.over-99"),
        Under1 = Plain("numbers.under-1"),
        Letters = [Plain("compass.letters.north"), Plain("compass.letters.south"), Plain("compass.letters.east"),
            Plain("compass.letters.west")],
        Unit = unit => Plain("units." + unit),
    };
}
