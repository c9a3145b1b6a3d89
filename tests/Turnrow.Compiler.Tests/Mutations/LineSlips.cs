using Turnrow.Syntax.Text;
using Turnrow.Syntax.Tree;

namespace Turnrow.Compiler.Tests.Mutations;

/// <summary>Slips with whole lines: one missing, one twice, two changed round.</summary>
internal static class LineSlips
{
    public static IEnumerable<Slip> Of(SlipPattern pattern, int index)
    {
        var (span, statement) = (Whole(pattern, index), pattern.Tree.Lines[index].Statement!);
        var what = MakesRows(statement) ? "a line of rows" : "another line";
        yield return pattern.Slip(what + " missing", index, span, "");
        yield return pattern.Slip(what + " twice", index, new TextSpan(span.End, 0), pattern.Text(span));
        if (index + 1 == pattern.Tree.Lines.Count) yield break;
        var next = Whole(pattern, index + 1);
        if (next.Start != span.End) yield break;
        var both = MakesRows(statement) && MakesRows(pattern.Tree.Lines[index + 1].Statement!);
        yield return pattern.Slip(both ? "two lines of rows changed round" : "two other lines changed round", index, span.To(next), pattern.Text(next) + pattern.Text(span));
    }

    private static bool MakesRows(StatementSyntax statement) =>
        statement is RowStatement or StraightStatement or ShapeStatement or RepeatStatement;

    // With its indentation, comment and line end.
    private static TextSpan Whole(SlipPattern pattern, int index)
    {
        var source = pattern.Tree.Source;
        var line = pattern.Tree.Lines[index].Span;
        var (first, last) = (source.PositionOf(line.Start).Line, source.PositionOf(line.End).Line);
        var end = source.LineSpan(last).End;
        while (end < source.Text.Length && source.Text[end] is '\r' or '\n')
        {
            if (source.Text[end++] == '\n') break;
        }

        return TextSpan.FromBounds(source.LineSpan(first).Start, end);
    }
}
