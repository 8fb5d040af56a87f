using System.Buffers;
using System.Text;
using System.Text.Encodings.Web;

namespace InstallPacket.Packets.Templates;

/// <summary>
/// Makes any value literal text in Markdown: what a job says must never become a heading, a link, a table cell or markup. Only
/// signs with a meaning are escaped, so that the text stays readable.
/// </summary>
internal sealed class MarkdownEncoder : TextEncoder
{
    public static readonly MarkdownEncoder Instance = new();

    private static readonly SearchValues<char> Anywhere = SearchValues.Create("\\`*_{}[]<>|~^&!$");

    private MarkdownEncoder()
    {
    }

    public override int MaxOutputCharactersPerInputCharacter => 2;

    public override string Encode(string value)
    {
        var text = new StringBuilder(value.Length + 8);
        var firstWord = 0;
        while (firstWord < value.Length && IsSpace(value[firstWord])) firstWord++;
        for (var i = firstWord; i < value.Length; i++)
        {
            var c = value[i];
            // A line break would end the paragraph or the table row that the template began; runs of spaces mean code or a line end.
            if (IsSpace(c))
            {
                if (text[^1] != ' ') text.Append(' ');
                continue;
            }
            if (Anywhere.Contains(c) || IsMarkAtStart(value, i, firstWord)) text.Append('\\');
            text.Append(c);
        }
        if (text.Length > 0 && text[^1] == ' ') text.Length--;
        return text.ToString();
    }

    public override void Encode(TextWriter output, string value, int startIndex, int characterCount) =>
        output.Write(Encode(value.Substring(startIndex, characterCount)));

    public override void Encode(TextWriter output, char[] value, int startIndex, int characterCount) =>
        output.Write(Encode(new string(value, startIndex, characterCount)));

    public override bool WillEncode(int unicodeScalar) => unicodeScalar < 0x80;

    public override unsafe int FindFirstCharacterToEncode(char* text, int textLength) => textLength > 0 ? 0 : -1;

    // Never reached: every call goes through the whole-string forms above, since the start of a value matters.
    public override unsafe bool TryEncodeUnicodeScalar(int unicodeScalar, char* buffer, int bufferLength,
        out int numberOfCharactersWritten) =>
        throw new NotSupportedException("encode whole values");

    // A value may stand first in its line, where these signs begin lists, headings, rules and boxes if the right sign follows;
    // at the end of a value the template decides what follows. So -83 and 4.25 stay as they are.
    private static bool IsMarkAtStart(string value, int at, int firstWord)
    {
        var next = at + 1 < value.Length ? value[at + 1] : ' ';
        var space = char.IsControl(next) || char.IsWhiteSpace(next);
        return value[at] switch
        {
            '=' or ':' => at == firstWord,
            '#' => space || next == '#', // also the closing marks of a heading
            '-' => at == firstWord && (space || next == '-'),
            '+' => at == firstWord && space,
            '.' or ')' => space && !value.AsSpan(firstWord, at - firstWord).ContainsAnyExceptInRange('0', '9'),
            _ => false,
        };
    }

    private static bool IsSpace(char c) => char.IsControl(c) || c is ' ' or '\u2028' or '\u2029';
}
