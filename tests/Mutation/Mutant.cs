using Microsoft.CodeAnalysis;
using Microsoft.CodeAnalysis.Text;

namespace InstallPacket.Mutation;

/// <summary>One small change of the code.</summary>
/// <param name="Tree">The file.</param>
/// <param name="Path">Its path below the project, with forward slashes.</param>
/// <param name="Span">What is replaced.</param>
/// <param name="Replacement">The text in its place.</param>
/// <param name="Kind">The kind of change.</param>
internal sealed record Mutant(SyntaxTree Tree, string Path, TextSpan Span, string Replacement, string Kind)
{
    /// <summary>The folder of the project, a word of the trade.</summary>
    public string Folder => Path.Contains('/', StringComparison.Ordinal) ? Path[..Path.IndexOf('/', StringComparison.Ordinal)] : ".";

    public override string ToString()
    {
        var line = Tree.GetText().Lines.GetLineFromPosition(Span.Start);
        return $"{Path}:{line.LineNumber + 1} {Tree.GetText().ToString(Span)} -> {Replacement} | {line.ToString().Trim()}";
    }
}
