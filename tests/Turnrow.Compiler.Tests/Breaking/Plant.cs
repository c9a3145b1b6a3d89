using System.Globalization;
using Turnrow.Syntax;
using Turnrow.Syntax.Text;
using Turnrow.Syntax.Tree;

namespace Turnrow.Compiler.Tests.Breaking;

/// <summary>A claim made wrong.</summary>
/// <param name="Line">Index of its line in the tree.</param>
/// <param name="Position">Where to insert …</param>
/// <param name="Text">… what makes it wrong.</param>
internal sealed record Plant(int Line, int Position, string Text);

/// <summary>A pattern in which every line that can have a claim has one, and what each claim looks like when it is wrong.</summary>
internal sealed class ClaimedPattern
{
    private ClaimedPattern(SourceText source)
    {
        Tree = SyntaxReader.Read(source);
        Plants = [.. PlantsOf(Tree)];
        Words = new PatternWords(Tree);
    }

    public SyntaxTree Tree { get; }

    public IReadOnlyList<Plant> Plants { get; }

    public PatternWords Words { get; }

    /// <summary>A pattern of the repository with the claims that it lacks.</summary>
    public static ClaimedPattern Read(string path)
    {
        var source = Patterns.Read(path);
        var text = source.Text;
        foreach (var claim in Compilation.Of(source, Repository.Beside).MissingClaims.OrderByDescending(c => c.Position)) text = text.Insert(claim.Position, claim.Text);
        return new ClaimedPattern(new SourceText(path, text));
    }

    // Each wrong by another number, so that all can be wrong at once: the same difference in two would be taken for one cause.
    private static IEnumerable<Plant> PlantsOf(SyntaxTree tree)
    {
        var difference = 1;
        for (var i = 0; i < tree.Lines.Count; i++)
        {
            if (Claims.Of(tree.Lines[i].Statement) is { Parts: [var part, ..] })
                yield return new Plant(i, part.Count.Span.End, string.Create(CultureInfo.InvariantCulture, $" + {++difference}"));
        }
    }
}

/// <summary>Finds the claim of a statement.</summary>
internal static class Claims
{
    public static ClaimSyntax? Of(StatementSyntax? statement) => statement switch
    {
        PieceStatement piece => piece.Claim,
        BeginStatement begin => begin.Claim,
        FoundationRowStatement begin => begin.Claim,
        RowStatement row => row.Claim,
        StraightStatement straight => straight.Claim,
        LeaveStatement leave => leave.Claim,
        AddStatement add => add.Claim,
        ShapeStatement shape => shape.Claim,
        RepeatStatement repeat => repeat.Claim,
        ForSizesStatement some => Of(some.Done),
        _ => null,
    };
}
