using Turnrow.Compiler.Diagnostics.Kinds;
using Turnrow.Compiler.Pieces;
using Turnrow.Fabric.Colours;
using Turnrow.Fabric.Rows;
using Turnrow.Fabric.Words;
using Turnrow.Syntax.Tree;

namespace Turnrow.Compiler.Colours;

/// <summary>Looks at the yarns of the whole pattern: those that nothing is worked with, and those that are carried over many stitches.</summary>
internal static class YarnWarnings
{
    public static void Add(Context context, PieceBook book)
    {
        if (!context.Yarns.IsSaid) return;
        var used = new HashSet<string>(context.Yarns.OfSeams, StringComparer.Ordinal);
        var seen = new HashSet<(string Yarn, IReadOnlyList<Word> Words)>();
        var inDoubt = book.InDoubt || context.Yarns.InDoubt;
        foreach (var piece in book.All)
        {
            inDoubt |= piece.Unread || piece.RowsInDoubt;
            YarnBinding.CheckFollowed(context, piece);
            if (piece.CopyOf is not null) continue;
            foreach (var builder in piece.Builders)
            {
                foreach (var row in builder.Rows)
                {
                    // What could not be worked may have been worked with it.
                    inDoubt |= row.Work is null;
                    if (row.Yarn is not { } yarn) continue;
                    used.Add(yarn);
                    if (row.Work is { } work && seen.Add((yarn, work.Words)) && YarnWords.Has(work.Words)) YarnWords.Visit(work.Words, yarn, (also, _, _) => used.Add(also));
                }
            }

            if (piece.MirrorOf is not null) continue;
            BracketYarns.Add(context, piece);
            Floats(context, piece);
        }

        if (inDoubt || context.Yarns.IsMisnamed) return;
        foreach (var yarn in context.Yarns.All)
        {
            if (!used.Contains(yarn.Text)) context.Findings.Add(YarnUnused.At(yarn.Span, yarn.Text));
        }
    }

    // One finding a line and yarn: a picture's rows are one line's.
    private static void Floats(Context context, PieceState piece)
    {
        var told = new Dictionary<(object Line, string Yarn), List<(Row Row, Float Float)>>();
        var known = new Dictionary<(string Yarn, IReadOnlyList<Word> Words), IReadOnlyList<Float>>();
        foreach (var builder in piece.Builders)
        {
            Row? before = null;
            foreach (var row in builder.Rows)
            {
                var last = before;
                before = row;
                if (row is not { Yarn: { } yarn, Work: { } work, Origin.Value: SyntaxNode line }) continue;
                foreach (var one in OverJoin(context, last, row)) Tell(told, line, row, one);
                if (!YarnWords.Has(work.Words)) continue;
                if (!known.TryGetValue((yarn, work.Words), out var floats)) known[(yarn, work.Words)] = floats = Float.Longer(work.Words, yarn, context.Yarns.MostFloat);
                foreach (var one in floats) Tell(told, line, row, one);
            }
        }

        foreach (var ((line, yarn), floats) in told)
            context.Findings.Add(FloatLong.At(((SyntaxNode)line).Span, piece.Name, yarn, floats, context.Yarns.MostFloat));
    }

    // Round a tube a yarn that rests is carried on into the next round, unless the work is turned at the join.
    private static IReadOnlyList<Float> OverJoin(Context context, Row? before, Row row)
    {
        if (before is not { IsRound: true, Way: not RoundWay.Turned, Yarn: { } yarn, Work: { } work } || !row.IsRound || row.Begins is RowBegins.Joined) return [];
        if (!YarnWords.Has(work.Words) && !YarnWords.Has(row.Work!.Words)) return [];
        return Float.OverJoin((work.Words, yarn), (row.Work!.Words, row.Yarn!), context.Yarns.MostFloat);
    }

    private static void Tell(Dictionary<(object Line, string Yarn), List<(Row Row, Float Float)>> told, SyntaxNode line, Row row, Float one)
    {
        if (!told.TryGetValue((line, one.Yarn), out var list)) told[(line, one.Yarn)] = list = [];
        if (!list.Exists(l => l.Row.Number == row.Number)) list.Add((row, one));
    }
}
