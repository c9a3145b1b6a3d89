using Microsoft.CodeAnalysis;
using Microsoft.CodeAnalysis.CSharp;
using Microsoft.CodeAnalysis.CSharp.Syntax;

namespace Turnrow.Mutation;

/// <summary>The row model's files, with every change that compiles written into them behind a switch.</summary>
internal sealed class RowModelSource
{
    private static readonly CSharpParseOptions Options = new(LanguageVersion.CSharp14);

    private const string Usings = """
        global using System;
        global using System.Collections.Generic;
        global using System.IO;
        global using System.Linq;
        global using System.Threading;
        global using System.Threading.Tasks;
        """;

    private readonly string _folder;
    private readonly CSharpCompilation _whole;
    private readonly List<SyntaxTree> _files;
    private readonly List<(SyntaxTree File, Change Change, int Id)> _changes = [];

    /// <summary>Reads all files of a folder and finds the changes that compile.</summary>
    public RowModelSource(string folder)
    {
        _folder = folder;
        _files = [.. Directory.GetFiles(folder, "*.cs", SearchOption.AllDirectories)
            .Where(file => !Path.GetRelativePath(folder, file).StartsWith("obj", StringComparison.Ordinal))
            .Order(StringComparer.Ordinal)
            .Select(file => CSharpSyntaxTree.ParseText(File.ReadAllText(file), Options, file))];
        var references = ((string)AppContext.GetData("TRUSTED_PLATFORM_ASSEMBLIES")!).Split(Path.PathSeparator)
            .Where(static path => !Path.GetFileName(path).StartsWith("Turnrow", StringComparison.Ordinal))
            .Select(static path => MetadataReference.CreateFromFile(path));
        _whole = CSharpCompilation.Create("Turnrow.Fabric", [.. _files, Tree(Usings), Tree(SwitchWriter.Switch)], references,
            new CSharpCompilationOptions(OutputKind.DynamicallyLinkedLibrary, nullableContextOptions: NullableContextOptions.Enable));
        foreach (var file in _files)
        {
            if (!Compiles(file, file)) throw new InvalidOperationException(file.FilePath + " does not compile as it is");
            // Long ones may read alike, cut short: the first stands for them.
            foreach (var change in file.GetRoot().DescendantNodes().SelectMany(Changes.Of).DistinctBy(static c => (c.Node.SpanStart, c.What)))
            {
                Found++;
                if (Compiles(file, With(file, [(change, 0)]))) _changes.Add((file, change, _changes.Count));
            }
        }
    }

    /// <summary>Changes found, those that do not compile included.</summary>
    public int Found { get; }

    /// <summary>The changes that can be tried.</summary>
    public IReadOnlyList<Mutant> Mutants => [.. _changes.Select(c => Described(c.File, c.Change, c.Id))];

    /// <summary>Writes the files with their switches into a folder.</summary>
    public void WriteTo(string folder)
    {
        foreach (var file in _files)
        {
            var switched = With(file, _changes.Where(c => c.File == file).Select(c => (c.Change, c.Id)));
            Workbench.Write(Path.Combine(folder, Path.GetRelativePath(_folder, file.FilePath)), switched.ToString());
        }

        Workbench.Write(Path.Combine(folder, "Mutant.cs"), SwitchWriter.Switch);
    }

    private static SyntaxTree Tree(string text) => CSharpSyntaxTree.ParseText(text, Options);

    // What a rewriter puts together need not be what the same text reads as, so it is read anew.
    private static SyntaxTree With(SyntaxTree file, IEnumerable<(Change Change, int Id)> changes)
    {
        var writer = new SwitchWriter(changes.ToLookup(static c => c.Change.Node, static c => c));
        return CSharpSyntaxTree.ParseText(writer.Visit(file.GetRoot())!.ToFullString(), Options, file.FilePath);
    }

    private bool Compiles(SyntaxTree file, SyntaxTree instead)
    {
        var whole = file == instead ? _whole : _whole.ReplaceSyntaxTree(file, instead);
        return !whole.GetSemanticModel(instead).GetDiagnostics().Any(static d => d.Severity == DiagnosticSeverity.Error);
    }

    private Mutant Described(SyntaxTree file, Change change, int id)
    {
        var at = file.GetLineSpan(change.Node.Span).StartLinePosition;
        return new(id, Path.GetRelativePath(_folder, file.FilePath).Replace('\\', '/'), at.Line + 1, at.Character + 1, change.What, AtStart(change.Node));
    }

    private static bool AtStart(SyntaxNode node) => node.Ancestors().Any(static a => a switch
    {
        FieldDeclarationSyntax field => field.Modifiers.Any(SyntaxKind.StaticKeyword),
        PropertyDeclarationSyntax { Initializer: not null } property => property.Modifiers.Any(SyntaxKind.StaticKeyword),
        _ => false,
    });
}
