namespace Turnrow.Compiler.Tests.Naive.Making;

/// <summary>Makes up a picking up along row-ends of an earlier piece, over rows without a step between them.</summary>
public sealed class PickUpMaker(ChoiceTape tape, IReadOnlyList<string> stitches)
{
    public (PickedUp Start, int[] Counts)? Along(Sketch from)
    {
        if (from.HasShortRows)
            return null;
        var hand = tape.Of(Hand.Right, Hand.Left);
        var name = tape.OneIn(2) ? AnyName(from, hand) : null;
        var kind = tape.Of(WindowKind.Last, WindowKind.First, WindowKind.All, WindowKind.AllButFirst, WindowKind.AllButLast);
        var rows = tape.Between(1, 4);
        var perRows = tape.Between(1, 3);
        var window = kind == WindowKind.All ? RowWindow.All : new RowWindow(kind, rows);
        // A name that one edge alone bears says which edge is meant.
        var saysHand = name is null || BearsName(from, Frame.Opposite(hand), name) || !tape.OneIn(2);
        var start = new PickedUp(from.Name, saysHand ? hand : null, name, window, tape.Between(1, 3), tape.Of(stitches), perRows);
        if (Counts(from, hand, start with { Stitches = 1, PerRows = 1 }) is { } ends && tape.OneIn(3))
            start = start with { Evenly = new Sized(tape.Sizes(from.Sizes, 2, size => 2 * ends[size])) };
        return Counts(from, hand, start) is { } counts ? (start, counts) : null;
    }

    /// <summary>How many stitches it makes in each size, or nothing where it does not come out in all.</summary>
    public static int[]? Counts(Sketch from, Hand hand, PickedUp up)
    {
        var counts = new int[from.Sizes];
        for (var size = 0; size < from.Sizes; size++)
        {
            var marks = from.Marks(hand, size).Where(mark => up.Name is null || mark.Name == up.Name).ToList();
            var rows = Within(up.Window, marks, size);
            counts[size] = rows / up.PerRows * up.Stitches;
            if (up.Evenly is { } all)
            {
                counts[size] = all[size];
                if (rows < 1)
                    return null;
                continue;
            }
            if (rows < 1 || rows % up.PerRows != 0 || counts[size] < 2 || counts[size] > 40)
                return null;
        }
        return counts;
    }

    private static int Within(RowWindow window, List<EdgeMark> marks, int size)
    {
        var count = window.Rows[size];
        var all = marks.Count(mark => !mark.IsStep);
        var before = marks.TakeWhile(mark => !mark.IsStep).Count();
        // A row right after a step is left out: whether the step belongs to its walk is not said.
        var after = before == all && before == marks.Count ? all : marks.Count - marks.FindLastIndex(mark => mark.IsStep) - 2;
        return window.Kind switch
        {
            WindowKind.First => count <= before ? count : 0,
            WindowKind.Last => count <= after ? count : 0,
            WindowKind.AllButFirst => all - count <= after ? all - count : 0,
            WindowKind.AllButLast => all - count <= before ? all - count : 0,
            _ => before == marks.Count ? all : 0,
        };
    }

    private string? AnyName(Sketch from, Hand hand)
    {
        var names = from.Marks(hand, 0).Select(mark => mark.Name).Where(name => name.Length > 0).Distinct().ToList();
        return names.Count == 0 ? null : tape.Of<string>(names);
    }

    private static bool BearsName(Sketch from, Hand hand, string name) =>
        Enumerable.Range(0, from.Sizes).Any(size => from.Marks(hand, size).Any(mark => mark.Name == name));
}
