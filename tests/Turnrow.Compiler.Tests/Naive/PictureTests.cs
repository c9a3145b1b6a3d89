using Xunit;

namespace Turnrow.Compiler.Tests.Naive;

/// <summary>Pictures small enough to be seen at a glance.</summary>
public sealed class PictureTests
{
    // As drawn: the bottom line is row 1.
    private static readonly Picture _picture = new("tile", "sc", ["a.b", "ab."], [('a', "navy"), ('b', "rust"), ('.', "cream")]);

    [Fact]
    public void The_cloth_shows_the_picture_as_it_is_drawn()
    {
        var rows = Pieces.Worked(new BeginWith(6), new StraightIn(_picture, 3, true)).Rows;
        // Told from the right edge on, whichever way the row goes.
        Assert.Equal("cream rust navy cream rust navy", string.Join(' ', rows[0].Yarns));
        Assert.Equal("rust cream navy rust cream navy", string.Join(' ', rows[1].Yarns));
        Assert.Equal(rows[0].Yarns, rows[2].Yarns);
    }

    [Fact]
    public void A_picture_begins_with_the_right_side() =>
        Assert.Contains("wrong side", Pieces.Fault(new BeginWith(6), Pieces.Row(new Across("sc")), new StraightIn(_picture, 3, true)), StringComparison.Ordinal);
}
