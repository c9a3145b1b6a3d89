using Turnrow.Compiler.Diagnostics.Kinds;
using Turnrow.Syntax.Text;

namespace Turnrow.Compiler;

/// <summary>How many rows a pattern may have in all its pieces and sizes: more than any has, and few enough to be counted at once.</summary>
internal sealed class RowBudget(Findings findings)
{
    /// <summary>The most rows of a pattern. A garment in 20 sizes has some ten thousand.</summary>
    public const int MostRows = 120_000;

    /// <summary>What a piece costs in each size, whatever rows it has.</summary>
    public const int RowsLikePiece = 4;

    private long _left = MostRows;
    private bool _told;

    /// <summary>True if so many more rows fit; they are then taken. If not, that is told, once.</summary>
    public bool Take(long rows, TextSpan span)
    {
        if (rows <= _left)
        {
            _left -= rows;
            return true;
        }

        if (!_told) findings.Add(TooManyRows.InAll(span, MostRows));
        _told = true;
        return false;
    }
}
