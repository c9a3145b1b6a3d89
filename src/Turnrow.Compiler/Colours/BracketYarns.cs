using Turnrow.Compiler.Diagnostics.Kinds;
using Turnrow.Compiler.Pieces;
using Turnrow.Compiler.Rows;
using Turnrow.Fabric.Rows;
using Turnrow.Fabric.Words;
using Turnrow.Syntax.Text;
using Turnrow.Syntax.Tree;

namespace Turnrow.Compiler.Colours;

/// <summary>Warns of brackets whose beginning is worked with another yarn from the second time on, which is told once a bracket.</summary>
internal static class BracketYarns
{
    public static void Add(Context context, PieceState piece)
    {
        var told = new HashSet<object>(ReferenceEqualityComparer.Instance);
        var seen = new HashSet<(string Yarn, IReadOnlyList<Word> Words)>();
        foreach (var builder in piece.Builders)
        {
            foreach (var row in builder.Rows)
            {
                if (row is not { Yarn: { } yarn, Work: { } work, Origin.Value: SyntaxNode line } || !YarnWords.Has(work.Words) || !seen.Add((yarn, work.Words))) continue;
                YarnWords.VisitUnlike(work.Words, yarn, (repeat, first, next) =>
                {
                    if (repeat.Origin.Value is GroupItem bracket && told.Add(bracket)) context.Findings.Add(Of(context, row, line, new(bracket, repeat, first, next)));
                });
            }
        }
    }

    // The rows of a stitch pattern may stand in another file: they are told of where they are worked.
    private static Turnrow.Syntax.Diagnostics.Diagnostic Of(Context context, Row row, SyntaxNode line, BracketYarn found)
    {
        var before = found.Repeat.WorkedWays[0].Words.TakeWhile(static word => !IsChange(word)).ToList();
        var text = before.Count == 0 ? null : new WordText(context).OfList(before);
        return row.Plan is WordsPlan { Of: { } of } ? YarnNextTime.InPattern(line.Span, of.Pattern.Name, found, text) : YarnNextTime.At(found, text);
    }

    private static bool IsChange(Word word) => word is ChangeYarn || (word is Repeat repeat && YarnWords.Has(repeat.Words));
}

/// <summary>A bracket that begins with one yarn the first time and with another from the second on.</summary>
/// <param name="Bracket">As it is written.</param>
/// <param name="Repeat">As it is worked.</param>
/// <param name="First">The yarn of the first time.</param>
/// <param name="Next">The yarn of the others.</param>
internal sealed record BracketYarn(GroupItem Bracket, Repeat Repeat, string First, string Next)
{
    /// <summary>What is put behind the opening bracket to mend it.</summary>
    public string Mended => $"with {First}, ";

    /// <summary>Where that is put.</summary>
    public TextSpan Place => new(Bracket.Items[0].Span.Start, 0);
}
