using System.Buffers.Binary;
using System.Globalization;
using System.Text;

namespace InstallPacket.Cli.Tests.BadJobs;

/// <summary>
/// Applies an <c>edit.txt</c> to a copy of the base job, line by line:
/// <c>file: PATH</c> chooses the file (at first <c>house/job.yaml</c>); <c>replace: TEXT</c> then <c>with: TEXT</c> changes a text that
/// stands there exactly once; <c>append: N TEXT</c> writes a text N times at the end; <c>bytes: HEX</c> appends raw bytes;
/// <c>delete:</c> removes the file; <c>link: TARGET</c> puts a symbolic link in its place; <c>create:</c> begins an empty file.
/// <c>tile: NAME HEIGHT</c> writes a flat elevation tile of that height in metres below <c>_shared/terrain</c>.
/// In a text, <c>\n</c> is a line break and <c>\t</c> a tab. A line that starts with <c>#</c> is a remark.
/// </summary>
internal sealed class BadJobEdit(string folder)
{
    private string _file = "house/job.yaml";
    private string? _old;

    public void Apply(string edit)
    {
        foreach (var line in edit.Split('\n').Where(l => l.Length > 0 && l[0] != '#'))
        {
            var colon = line.IndexOf(':');
            if (colon < 0) throw new FormatException($"edit.txt: `{line}` has no colon.");
            Step(line[..colon], Text(line[(colon + 1)..]));
        }
        if (_old is not null) throw new FormatException($"edit.txt: `replace: {_old}` has no `with:`.");
    }

    private string Full => Path.Combine(folder, _file);

    private void Step(string word, string text)
    {
        switch (word)
        {
            case "file": _file = text; break;
            case "replace": _old = text; break;
            case "with": Replace(text); break;
            case "append": Append(text); break;
            case "bytes": File.WriteAllBytes(Full, [.. File.ReadAllBytes(Full), .. Convert.FromHexString(text.Replace(" ", "", StringComparison.Ordinal))]); break;
            case "delete": File.Delete(Full); break;
            case "create": Directory.CreateDirectory(Path.GetDirectoryName(Full)!); File.WriteAllText(Full, ""); break;
            case "tile": Tile(text); break;
            case "link": File.Delete(Full); File.CreateSymbolicLink(Full, text); break;
            default: throw new FormatException($"edit.txt: `{word}` is not a step.");
        }
    }

    private void Tile(string text)
    {
        var words = text.Split(' ', StringSplitOptions.RemoveEmptyEntries);
        var height = new byte[2];
        BinaryPrimitives.WriteInt16BigEndian(height, short.Parse(words[1], CultureInfo.InvariantCulture));
        var bytes = new byte[2 * 1201 * 1201];
        for (var i = 0; i < bytes.Length; i++) bytes[i] = height[i % 2];
        var path = Path.Combine(folder, "_shared/terrain", words[0]);
        Directory.CreateDirectory(Path.GetDirectoryName(path)!);
        File.WriteAllBytes(path, bytes);
    }

    private void Replace(string with)
    {
        var text = File.ReadAllText(Full);
        var old = _old ?? throw new FormatException($"edit.txt: `with: {with}` follows no `replace:`.");
        var at = text.IndexOf(old, StringComparison.Ordinal);
        if (at < 0) throw new FormatException($"edit.txt: `{old}` does not stand in {_file}.");
        if (text.IndexOf(old, at + 1, StringComparison.Ordinal) >= 0) throw new FormatException($"edit.txt: `{old}` stands more than once in {_file}.");
        File.WriteAllText(Full, string.Concat(text.AsSpan(0, at), with, text.AsSpan(at + old.Length)));
        _old = null;
    }

    private void Append(string text)
    {
        var space = text.IndexOf(' ');
        var times = int.Parse(text.AsSpan(0, space), CultureInfo.InvariantCulture);
        File.AppendAllText(Full, new StringBuilder().Insert(0, text[(space + 1)..], times).ToString());
    }

    private static string Text(string written) =>
        (written.StartsWith(' ') ? written[1..] : written).Replace("\\n", "\n", StringComparison.Ordinal).Replace("\\t", "\t", StringComparison.Ordinal);
}
