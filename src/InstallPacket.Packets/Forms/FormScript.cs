using System.Security.Cryptography;
using System.Text;

namespace InstallPacket.Packets.Forms;

/// <summary>The script of the form: the files of <c>Forms/Script</c> one after the other, in a function of their own.</summary>
internal static class FormScript
{
    private static readonly string[] Files =
        [
            "values", "angles", "yaml-read", "yaml-write", "fields", "lists", "walls", "chain-write", "chain-read", "job-write", "job-read", "keep",
            "checks", "tools", "page",
        ];

    /// <summary>The text between the tags.</summary>
    public static string Text { get; } = Joined();

    /// <summary>Its hash, as the content security policy names it.</summary>
    public static string Hash { get; } = "sha256-" + Convert.ToBase64String(SHA256.HashData(Encoding.UTF8.GetBytes(Text)));

    private static string Joined()
    {
        var text = new StringBuilder("\n(() => {\n\"use strict\";\n");
        foreach (var name in Files)
        {
            using var stream = typeof(FormScript).Assembly.GetManifestResourceStream($"form/{name}.js")
                ?? throw new InvalidOperationException($"form/{name}.js is not in the program.");
            using var reader = new StreamReader(stream);
            text.Append(reader.ReadToEnd().ReplaceLineEndings("\n"));
        }
        return text.Append("})();\n").ToString();
    }
}
