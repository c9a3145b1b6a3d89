namespace Turnrow.Publishing.Charts.Layout;

/// <summary>A cell and where it stands in its row, in working order.</summary>
/// <param name="Cell">The cell.</param>
/// <param name="Place">The place, of those that the row is worked over, that its feet are counted from.</param>
/// <param name="Top">The first place that it makes.</param>
/// <param name="Column">Its first column.</param>
internal readonly record struct PlacedCell(Cell Cell, int Place, int Top, int Column)
{
    /// <summary>The first place it is worked into.</summary>
    public int Foot => Place + Cell.Foot;

    /// <summary>Its middle, which decides on which side of a fold it lies.</summary>
    public double Middle => MiddleOf(Cell, Column);

    /// <summary>The middle of a cell; of one that takes no room of its own, that of the column before it, where it is drawn.</summary>
    public static double MiddleOf(Cell cell, int column) => column + (cell.Columns == 0 ? -0.5 : cell.Columns / 2.0);
}

/// <summary>A row's stitches and spaces in columns, in working order, from column 0.</summary>
internal sealed class Strip(Loop root)
{
    /// <summary>Everything, once.</summary>
    public Loop Root { get; } = root;

    /// <summary>Places made.</summary>
    public int Tops => Root.Tops;

    /// <summary>Columns taken up.</summary>
    public int Columns => Root.Columns;

    /// <summary>The column where a place made starts; of the number of places, where the last one ends.</summary>
    public int EdgeOfTop(int top)
    {
        if (top >= Tops) return Columns;
        var column = 0;
        StripNode node = Root;
        while (node is Loop loop)
        {
            var time = top / loop.Unit.Top;
            top -= time * loop.Unit.Top;
            column += time * loop.Unit.Column;
            var child = ChildAt(loop, start => start.Top, top);
            top -= loop.Starts[child].Top;
            column += loop.Starts[child].Column;
            node = loop.Children[child];
        }

        // The tops of one stitch are a column each; a space is a single top.
        return column + top;
    }

    /// <summary>The first or the last cell; null for none.</summary>
    public Cell? EndCell(bool first)
    {
        StripNode? node = Root;
        while (node is Loop loop) node = loop.Children.Count == 0 ? null : loop.Children[first ? 0 : ^1];
        return (Cell?)node;
    }

    /// <summary>Visits the cells whose middle lies between two columns.</summary>
    public void Visit(double from, double to, Action<PlacedCell> visit) => Visit(Root, default, from, to, visit);

    /// <summary>Counts what lies between two columns, by kind, without taking repeats apart.</summary>
    public Tally Count(double from, double to)
    {
        var tally = new Tally();
        Count(Root, 0, from, to, 1, tally);
        return tally;
    }

    private static void Visit(StripNode node, ChildStart at, double from, double to, Action<PlacedCell> visit)
    {
        if (node is Cell cell)
        {
            var placed = new PlacedCell(cell, at.Place, at.Top, at.Column);
            if (placed.Middle >= from && placed.Middle < to) visit(placed);
            return;
        }

        var loop = (Loop)node;
        var (first, last) = TimesWithin(loop, at.Column, from, to);
        for (var time = first; time <= last; time++)
        {
            for (var i = 0; i < loop.Children.Count; i++)
            {
                var start = loop.Starts[i];
                var column = at.Column + (time * loop.Unit.Column) + start.Column;
                if (column > to || column + loop.Children[i].Columns < from) continue;
                var place = at.Place + (time * loop.Unit.Place) + start.Place;
                Visit(loop.Children[i], new ChildStart(place, at.Top + (time * loop.Unit.Top) + start.Top, column), from, to, visit);
            }
        }
    }

    private static void Count(StripNode node, int column, double from, double to, long times, Tally tally)
    {
        if (node is Cell cell)
        {
            var middle = PlacedCell.MiddleOf(cell, column);
            if (middle >= from && middle < to) tally.Add(cell, times);
            return;
        }

        var loop = (Loop)node;
        var (first, last) = TimesWithin(loop, column, from, to);
        var wholeFirst = Math.Clamp((int)Math.Ceiling((from - column) / loop.Unit.Column), first, last + 1);
        var wholeLast = Math.Clamp((int)Math.Floor((to - column) / loop.Unit.Column) - 1, wholeFirst - 1, last);
        for (var time = first; time <= last; time++)
        {
            var many = 1L;
            if (time == wholeFirst && wholeLast >= wholeFirst) many = wholeLast - wholeFirst + 1;
            for (var i = 0; i < loop.Children.Count; i++)
                Count(loop.Children[i], column + (time * loop.Unit.Column) + loop.Starts[i].Column, from, to, times * many, tally);
            time += (int)many - 1;
        }
    }

    private static (int First, int Last) TimesWithin(Loop loop, int column, double from, double to)
    {
        if (loop.Unit.Column == 0 || loop.Times == 0) return (0, -1);
        var first = (int)Math.Clamp(Math.Floor((from - column) / loop.Unit.Column), 0, loop.Times - 1);
        var last = (int)Math.Clamp(Math.Floor((to - column) / loop.Unit.Column), -1, loop.Times - 1);
        return (first, last);
    }

    // The last child that does not start behind a position.
    private static int ChildAt(Loop loop, Func<ChildStart, int> of, int position)
    {
        var (low, high) = (0, loop.Starts.Count - 1);
        while (low < high)
        {
            var middle = (low + high + 1) / 2;
            if (of(loop.Starts[middle]) <= position) low = middle;
            else high = middle - 1;
        }

        return low;
    }
}
