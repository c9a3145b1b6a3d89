using Turnrow.Compiler.Grading;
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

    /// <summary>Warnings that the file accepts with a reason: they are not among <see cref="Diagnostics"/>.</summary>
    public IReadOnlyList<AcceptedWarning> Accepted { get; private init; } = [];

    /// <summary>Compiles a text.</summary>
    /// <param name="source">The text.</param>
    /// <param name="beside">Gives the text of a file beside the pattern, or null; without it there are none.</param>
    public static Compilation Of(SourceText source, Func<string, string?>? beside = null)
    {
        var tree = SyntaxReader.Read(source);
        var (pattern, findings, missing) = PatternBinder.Bind(tree, beside ?? (static _ => null));
        var (told, accepted) = Acceptance.Sort(tree, findings.All);
        var found = new List<Diagnostic>(tree.Diagnostics);
        found.AddRange(told);
        var errors = found.Count(d => d.Kind.Severity == Severity.Error);
        return new Compilation(tree, [.. found.OrderBy(d => d.Span.Start)], pattern with { Errors = errors }, missing) { Accepted = accepted };
    }

    /// <summary>The line (from 1) of the statement that made a row.</summary>
    public int LineOf(Row row) => row.Origin.Value switch
    {
        SyntaxNode node => Tree.Source.PositionOf(node.Span.Start).Line,
        LineSyntax line => Tree.Source.PositionOf(line.Span.Start).Line,
        _ => 1,
    };
}

/// <summary>A warning that the designer has thought about.</summary>
/// <param name="Warning">The warning.</param>
/// <param name="Reason">Why it is right as it is, in the designer's words.</param>
public sealed record AcceptedWarning(Diagnostic Warning, string Reason);

/// <summary>A place where a claim could stand.</summary>
/// <param name="Position">Where to insert, in UTF-16 units.</param>
/// <param name="Text">What to insert, with the space before it: <c>" = 61 (65, 73)"</c>.</param>
public sealed record MissingClaim(int Position, string Text);
