using Turnrow.Compiler.Diagnostics.Kinds;
using Turnrow.Syntax.Tree;

namespace Turnrow.Compiler.Pieces;

/// <summary>
/// <c>for L to 3X: straight 2 rows</c>. In the other sizes all is in doubt while the line is read, so that nothing is said of them, and it
/// is then as it was before.
/// </summary>
internal static class ForSizesBinding
{
    public static void Bind(Context context, PieceState piece, ForSizesStatement statement)
    {
        if (SizesOf(context, statement) is { } sizes)
        {
            piece.During(sizes, () => context.Here.During(sizes, () => PieceStatements.Bind(context, piece, statement.Done)));
            return;
        }

        // Which sizes have the line is not known, so neither is any count of them.
        piece.NamesInDoubt |= statement.Done is EdgeNameStatement or MarkStatement;
        piece.StepsInDoubt |= statement.Done is LeaveStatement or AddStatement;
        piece.Doubt(true);
    }

    /// <summary>The sizes that a line is for; null, and reported, if one of them is not known.</summary>
    internal static bool[]? SizesOf(Context context, ForSizesStatement statement)
    {
        var sizes = new bool[context.Sizes];
        foreach (var range in statement.Sizes)
        {
            if (Find(context, range.First) is not { } first || Find(context, range.Last) is not { } last) return null;
            if (last < first)
            {
                context.Findings.Add(SizesBackwards.At(range));
                return null;
            }

            if (Array.IndexOf(sizes, true, first, last - first + 1) is >= 0 and var twice)
            {
                context.Findings.Add(SizeTwice.At(range.Span, context.Findings.SizeNames[twice]));
                return null;
            }

            Array.Fill(sizes, true, first, last - first + 1);
        }

        return sizes;
    }

    private static int? Find(Context context, NameSyntax size)
    {
        var names = context.Findings.SizeNames;
        for (var i = 0; i < names.Count; i++)
        {
            if (string.Equals(names[i], size.Text, StringComparison.OrdinalIgnoreCase)) return i;
        }

        if (!context.SizesInDoubt) context.Findings.Add(SizeUnknown.At(size, names));
        return null;
    }
}
