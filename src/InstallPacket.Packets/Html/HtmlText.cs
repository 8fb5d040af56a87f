using System.Text;
using Markdig.Renderers.Html;
using Markdig.Syntax;

namespace InstallPacket.Packets.Html;

/// <summary>Text inside elements and attributes of a page.</summary>
internal static class HtmlText
{
    /// <summary>Escapes only what has meaning, so that the page stays readable in a diff.</summary>
    public static string Escape(ReadOnlySpan<char> text)
    {
        if (text.IndexOfAny("&<>\"") < 0) return text.ToString();
        var safe = new StringBuilder(text.Length + 16);
        foreach (var c in text)
        {
            switch (c)
            {
                case '&': safe.Append("&amp;"); break;
                case '<': safe.Append("&lt;"); break;
                case '>': safe.Append("&gt;"); break;
                case '"': safe.Append("&quot;"); break;
                default: safe.Append(c); break;
            }
        }
        return safe.ToString();
    }

    /// <summary>The identifier that the parser gave a heading.</summary>
    public static string IdOf(Block block) => block.TryGetAttributes()?.Id ?? "";
}
