using Turnrow.Compiler;
using Turnrow.Fabric.Stitches;
using Turnrow.Publishing.Instructions;
using Turnrow.Syntax.Text;
using Xunit;

namespace Turnrow.Publishing.Tests.Instructions;

/// <summary>Whatever is wrong with a file, what is known of it is written.</summary>
public class RobustnessTests
{
    [Fact]
    public void The_waistcoat_without_any_one_line_is_written_all_the_same()
    {
        var lines = File.ReadAllLines(Repository.PathOf("patterns/fenland-wrap-waistcoat.turnrow"));
        for (var i = 0; i < lines.Length; i++)
        {
            var pattern = Compilation.Of(new SourceText("p", string.Join('\n', lines.Where((_, at) => at != i)))).Pattern;
            Assert.NotEmpty(WrittenInstructions.Write(pattern, Terms.US));
        }
    }

    [Fact]
    public void A_wide_piece_costs_what_its_words_cost()
    {
        var panel = Written.Piece("pattern \"P\"\npiece panel\nbegin with 90001 stitches\nrow 1 RS: (dc, ch 1, skip 1) until 1 remain, dc\nrow: dc, (ch 1, dc in next dc) across\nrepeat row 2, 50 more times");
        Assert.Contains("[ch 1, dc in next dc] 44998 times", panel, StringComparison.Ordinal);
    }
}
