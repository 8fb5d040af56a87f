using System.Reflection;
using System.Runtime.InteropServices;
using Microsoft.CodeAnalysis;
using Microsoft.CodeAnalysis.CSharp;
using Microsoft.CodeAnalysis.Diagnostics;
using Microsoft.CodeAnalysis.Text;

namespace InstallPacket.Mutation;

/// <summary>The code of a project as the compiler sees it: its files, what the build adds, its tables and its references.</summary>
internal sealed class ProjectCode
{
    private readonly string _folder;
    private readonly CSharpCompilation _compilation;

    /// <param name="folder">Folder of the project, built before.</param>
    /// <param name="references">Folder of the tests' program, which holds every assembly that the project uses.</param>
    public ProjectCode(string folder, string references)
    {
        _folder = folder;
        Name = Path.GetFileName(folder);
        var options = new CSharpParseOptions(LanguageVersion.Latest);
        var files = Below("*.cs").Concat(Directory.EnumerateFiles(Path.Combine(folder, "obj/Debug/net10.0"), "*.cs"));
        var trees = files.Select(f => CSharpSyntaxTree.ParseText(SourceText.From(File.ReadAllText(f), System.Text.Encoding.UTF8), options, f));
        var platform = ((string)AppContext.GetData("TRUSTED_PLATFORM_ASSEMBLIES")!).Split(Path.PathSeparator)
            .Where(f => !Path.GetFileName(f).StartsWith("Microsoft.CodeAnalysis", StringComparison.Ordinal)
                && Path.GetFileName(f) != "Mutation.dll");
        var own = Directory.EnumerateFiles(references, "InstallPacket.*.dll").Where(f => Path.GetFileName(f) != Name + ".dll");
        var written = CSharpCompilation.Create(Name, trees, platform.Concat(own).Select(f => MetadataReference.CreateFromFile(f)),
            new CSharpCompilationOptions(OutputKind.DynamicallyLinkedLibrary, optimizationLevel: OptimizationLevel.Release,
                nullableContextOptions: NullableContextOptions.Enable, warningLevel: 0));
        CSharpGeneratorDriver.Create(Generators(), parseOptions: options).RunGeneratorsAndUpdateCompilation(written, out var whole, out _);
        _compilation = (CSharpCompilation)whole;
    }

    // Regular expressions and the writer of JSON are written out at compile time, by generators that come with the platform.
    private static IEnumerable<ISourceGenerator> Generators()
    {
        var root = Path.GetFullPath(Path.Combine(RuntimeEnvironment.GetRuntimeDirectory(), "../../../packs/Microsoft.NETCore.App.Ref"));
        string[] names = ["System.Text.RegularExpressions.Generator.dll", "System.Text.Json.SourceGeneration.dll"];
        return names.Select(n => Directory.EnumerateFiles(root, n, SearchOption.AllDirectories).Max()!)
            .SelectMany(f => new AnalyzerFileReference(f, new Loader()).GetGenerators(LanguageNames.CSharp));
    }

    private sealed class Loader : IAnalyzerAssemblyLoader
    {
        public void AddDependencyLocation(string fullPath)
        {
        }

        public Assembly LoadFromPath(string fullPath) => Assembly.LoadFrom(fullPath);
    }

    public string Name { get; }

    public List<Mutant> Mutants()
    {
        var found = new List<Mutant>();
        var written = Below("*.cs").ToHashSet(StringComparer.Ordinal);
        foreach (var tree in _compilation.SyntaxTrees.Where(t => written.Contains(t.FilePath)).OrderBy(t => t.FilePath, StringComparer.Ordinal))
        {
            var path = Path.GetRelativePath(_folder, tree.FilePath).Replace('\\', '/');
            var finder = new MutantFinder(_compilation.GetSemanticModel(tree), path);
            finder.Visit(tree.GetRoot());
            found.AddRange(finder.Found);
        }
        return found;
    }

    /// <summary>Compiles, with one mutant or as it stands.</summary>
    /// <returns>Whether it compiles.</returns>
    public bool Compile(Mutant? mutant, string path)
    {
        var changed = _compilation;
        if (mutant is not null)
        {
            var text = mutant.Tree.GetText().WithChanges(new TextChange(mutant.Span, mutant.Replacement));
            changed = _compilation.ReplaceSyntaxTree(mutant.Tree, mutant.Tree.WithChangedText(text));
        }
        var tables = Below("*.csv").Select(f => new ResourceDescription(Path.GetRelativePath(_folder, f).Replace('\\', '/'),
            () => File.OpenRead(f), true));
        using var bytes = new MemoryStream();
        var result = changed.Emit(bytes, manifestResources: tables);
        if (!result.Success)
        {
            if (mutant is null) throw new InvalidOperationException(string.Join("\n", result.Diagnostics.Take(5)));
            return false;
        }
        File.WriteAllBytes(path, bytes.ToArray());
        return true;
    }

    private IEnumerable<string> Below(string pattern) => Directory.EnumerateFiles(_folder, pattern, SearchOption.AllDirectories)
        .Where(f => Path.GetRelativePath(_folder, f) is var below && !below.StartsWith("obj", StringComparison.Ordinal)
            && !below.StartsWith("bin", StringComparison.Ordinal));
}
