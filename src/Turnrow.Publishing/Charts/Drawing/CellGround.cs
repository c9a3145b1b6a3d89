using Turnrow.Fabric.Words;
using Turnrow.Publishing.Charts.Layout;

namespace Turnrow.Publishing.Charts.Drawing;

/// <summary>Where the stitches of a row lie on the sheet, whether it is drawn as a band or round the middle.</summary>
internal abstract class CellGround
{
    /// <summary>How far a stitch's foot stays above what it is worked into.</summary>
    protected const double AboveFoot = 3;

    /// <summary>How far from the row a spike goes down that leads to a row not drawn.</summary>
    protected const double RoomForSpike = 12;

    private const double RoomForHookMark = 5;

    /// <summary>The row in columns.</summary>
    public abstract RowLayout Row { get; }

    /// <summary>How high it is, in pixels.</summary>
    public abstract double Height { get; }

    /// <summary>How wide stitches stand, 1 for a column.</summary>
    public abstract double Pitch { get; }

    /// <summary>The columns that are drawn, in working order.</summary>
    public abstract IEnumerable<Columns> Open { get; }

    /// <summary>True if the stitch in a column is drawn.</summary>
    public virtual bool IsOpen(int column) => true;

    /// <summary>True if all stitches go into a ring, so that each stands by itself.</summary>
    public virtual bool IsInRing => false;

    /// <summary>A point over a column.</summary>
    /// <param name="column">The column in working order.</param>
    /// <param name="above">How far above the row's foot.</param>
    public abstract Stand Head(double column, double above);

    /// <summary>The foot of a stitch.</summary>
    /// <param name="place">The place that it is worked into.</param>
    /// <param name="column">The column in which it stands.</param>
    /// <param name="hook">Where the hook goes.</param>
    public abstract Stand Foot(int place, double column, HookInto hook);

    /// <summary>Beside the row's first stitch.</summary>
    /// <param name="above">How far above the row's foot.</param>
    public abstract Stand Beside(double above);

    /// <summary>The foot of a stitch as a point.</summary>
    public Point FootAt(int place, double column, HookInto hook) => Foot(place, column, hook).At;

    /// <summary>How far above what it is worked into a foot stays.</summary>
    protected static double FootAbove(HookInto hook) => AboveFoot + (hook == HookInto.BothLoops ? 0 : RoomForHookMark);
}

/// <summary>A row drawn as a band.</summary>
internal sealed class BandGround(Sheet sheet, RowBand band) : CellGround
{
    private const double BesideFirst = 0.55;

    /// <inheritdoc/>
    public override RowLayout Row => band.Row;

    /// <inheritdoc/>
    public override double Height => band.Height;

    /// <inheritdoc/>
    public override double Pitch => band.Row.Pitch;

    /// <inheritdoc/>
    public override IEnumerable<Columns> Open => sheet.Layout.Axis.Open(Row.Extent).Select(Row.InWorkingOrder);

    /// <inheritdoc/>
    public override Stand Head(double column, double above) => At(Row.TopColumn(column), above);

    /// <inheritdoc/>
    public override Stand Foot(int place, double column, HookInto hook) => hook.RowsDown() is > 0 and var down
        ? new Stand(new Point(sheet.X(Row.FootColumn(place)), sheet.Y(BottomOf(Row.Row.Number - down))), Stand.Upright)
        : At(Row.FootColumn(place), FootAbove(hook));

    /// <inheritdoc/>
    public override Stand Beside(double above)
    {
        var outer = Row.Direction > 0 ? Math.Min(Row.TopStart, Row.BelowStart) : Math.Max(Row.TopStart, Row.BelowStart);
        return At(outer - (Row.Direction * BesideFirst), above);
    }

    // The foot of a row further down; where that is not drawn, a little below this one.
    private double BottomOf(int number)
    {
        foreach (var other in sheet.Layout.Bands)
        {
            if (other is RowBand { Row.Row.Number: var known } below && known == number) return below.Bottom + AboveFoot;
        }

        return band.Bottom - RoomForSpike;
    }

    private Stand At(double column, double above) => new(new Point(sheet.X(column), sheet.Y(band.Bottom + above)), Stand.Upright);
}
