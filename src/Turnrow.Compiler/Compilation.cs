using Turnrow.Fabric.Patterns;
using Turnrow.Fabric.Rows;
using Turnrow.Syntax;
using Turnrow.Syntax.Diagnostics;
using Turnrow.Syntax.Text;
using Turnrow.Syntax.Tree;

namespace Turnrow.Compiler;

/// <summary>
/// A pattern file, compiled: the one way in. It is a pure function of the text; nothing a designer can type makes it throw.
/// </summary>
public sealed class Compilation
{
    private Compilation(SyntaxTree tree, IReadOnlyList<Diagnostic> diagnostics, Pattern pattern, IReadOnlyList<MissingClaim> missingClaims)
    {
        Tree = tree;
        Diagnostics = diagnostics;
        Pattern = pattern;
        MissingClaims = missingClaims;
    }

    /// <summary>The file as it was read.</summary>
    public SyntaxTree Tree { get; }

    /// <summary>All that was found, in the order of the text.</summary>
    public IReadOnlyList<Diagnostic> Diagnostics { get; }

    /// <summary>The row model, as far as the file could be understood.</summary>
    public Pattern Pattern { get; }

    /// <summary>Where a claim could stand and does not, with the calculated counts.</summary>
    public IReadOnlyList<MissingClaim> MissingClaims { get; }

    /// <summary>Compiles a text.</summary>
    public static Compilation Of(SourceText source)
    {
        var tree = SyntaxReader.Read(source);
        var (pattern, findings, missing) = PatternBinder.Bind(tree);
        var found = new List<Diagnostic>(tree.Diagnostics);
        found.AddRange(findings.All);
        var errors = found.Count(d => d.Kind.Severity == Severity.Error);
        return new Compilation(tree, [.. found.OrderBy(d => d.Span.Start)], pattern with { Errors = errors }, missing);
    }

    /// <summary>The line (from 1) of the statement that made a row.</summary>
    public int LineOf(Row row) => row.Origin.Value switch
    {
        SyntaxNode node => Tree.Source.PositionOf(node.Span.Start).Line,
        LineSyntax line => Tree.Source.PositionOf(line.Span.Start).Line,
        _ => 1,
    };
}

/// <summary>A place where a claim could stand.</summary>
/// <param name="Position">Where to insert, in UTF-16 units.</param>
/// <param name="Text">What to insert, with the space before it: <c>" = 61 (65, 73)"</c>.</param>
public sealed record MissingClaim(int Position, string Text);
