using Turnrow.Fabric.Pieces;
using Xunit;

namespace Turnrow.Compiler.Tests.Pieces;

/// <summary>Pieces that are made several times and begin at others that are made as often: each at its own.</summary>
public sealed class MadeAlikeTests
{
    private const string Sock = """
        piece leg, make 2
        begin with 20 stitches
        round 1: sc around
        straight 3 rounds
        divide: 10 for heel, 10 for instep

        """;

    [Fact]
    public void Each_goes_on_from_its_own_with_the_yarn_that_is_there()
    {
        var sock = Compiled.Of(Sock + """
            piece heel, make 2 from leg: heel
            row RS: sc across
            straight 3 rows
            piece foot, make 2 picked up around heel last row and heel left edge and leg instep and heel right edge: 1 sc in each st, 1 sc in each row = 28
            straight 2 rounds
            """).Clean();
        Assert.Equal([2, 2, 2], sock.Pattern.Pieces.Select(piece => piece.Copies));
        Assert.False(Assert.IsType<PartStart>(sock.Piece("heel", 0).Start).Joined);
        // The hook is at the right end of the heel's last row, where the round begins.
        Assert.False(Assert.IsType<PickUpStart>(sock.Piece("foot", 0).Start).Joined);
    }

    [Theory]
    [InlineData("piece heel from leg: heel\nrow RS: sc across\n")]
    [InlineData("piece heel, make 3 from leg: heel\nrow RS: sc across\n")]
    [InlineData("piece cuff, make 3 picked up around leg foundation: 1 sc in each st\nround 2: sc around\n")]
    public void One_that_is_not_made_as_often_has_to_say_at_which_it_begins(string lines) =>
        Assert.Contains("made-several", Compiled.Of(Sock + lines).Found);

    [Fact]
    public void What_is_made_once_is_no_beginning_for_several() =>
        Assert.Contains("made-several", Compiled.Of("piece back\nbegin with 20 stitches\nrow 1: sc across\npiece strap, make 2 from back: 4 stitches at right edge\nrow: sc across\n").Found);
}
