using System.Globalization;
using Turnrow.Syntax;
using Turnrow.Syntax.Text;
using Turnrow.Syntax.Tree;

namespace Turnrow.Compiler.Tests.Breaking;

/// <summary>A claim made wrong.</summary>
/// <param name="Line">Index of its line in the tree.</param>
/// <param name="Piece">Number of its piece.</param>
/// <param name="Position">Where to insert …</param>
/// <param name="Text">… what makes it wrong.</param>
internal sealed record Plant(int Line, int Piece, int Position, string Text);

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
        foreach (var claim in Compilation.Of(source).MissingClaims.OrderByDescending(c => c.Position)) text = text.Insert(claim.Position, claim.Text);
        return new ClaimedPattern(new SourceText(path, text));
    }

    /// <summary>
    /// Each claim made wrong in turn, in all pieces at once: what a piece begins with is said by its own line, so a claim of one piece is
    /// nothing to another.
    /// </summary>
    public IEnumerable<IReadOnlyList<Plant>> Rounds()
    {
        var pieces = Plants.GroupBy(plant => plant.Piece).Select(piece => piece.ToList()).ToList();
        for (var round = 0; round < pieces.Max(piece => piece.Count); round++)
            yield return [.. pieces.Where(piece => round < piece.Count).Select(piece => piece[round])];
    }

    // Wrong by another number in each piece: the same difference in two would be taken for one cause.
    private static IEnumerable<Plant> PlantsOf(SyntaxTree tree)
    {
        var piece = 0;
        for (var i = 0; i < tree.Lines.Count; i++)
        {
            if (tree.Lines[i].Statement is PieceStatement) piece++;
            if (Claims.Of(tree.Lines[i].Statement) is { Parts: [var part, ..] })
                yield return new Plant(i, piece, part.Count.Span.End, string.Create(CultureInfo.InvariantCulture, $" + {piece + 2}"));
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
        RowStatement row => row.Claim,
        StraightStatement straight => straight.Claim,
        LeaveStatement leave => leave.Claim,
        AddStatement add => add.Claim,
        ShapeStatement shape => shape.Claim,
        RepeatStatement repeat => repeat.Claim,
        _ => null,
    };
}
