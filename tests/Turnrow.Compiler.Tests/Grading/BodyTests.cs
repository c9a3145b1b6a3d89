using Turnrow.Fabric.Bodies;
using Turnrow.Fabric.Numbers;
using Turnrow.Syntax.Text;
using Xunit;

namespace Turnrow.Compiler.Tests.Grading;

/// <summary>Measures that a table of bodies brings in.</summary>
public sealed class BodyTests
{
    // Craft Yarn Council, women, upper ends 30, 34, 38, 42, 46, 50, 54, 58 and 62 in: as stated in the "Dotty Pullover" pattern,
    // yayforyarn.com; the other numbers of the table from memory of craftyarncouncil.com/standards/woman-size.
    [Fact]
    public void The_bust_of_women_is_the_upper_end_of_the_published_range()
    {
        var bust = BodyTables.Find("women", inInches: true)!.Rows.Single(row => row.Name == "bust");
        Assert.Equal([30, 34, 38, 42, 46, 50, 54, 58, 62], bust.Upper.Select(cm => (int)(cm!.Value * Rational.Of(100, 254)!.Value)!.Value.Floor()));
    }

    // Yarnspirations CAK0329-008157M prints chests of 21, 23, 25, 26 1/2 and 28 in for 2, 4, 6, 8 and 10.
    [Fact]
    public void The_chest_of_children_is_as_leaflets_print_it() =>
        Assert.Equal("53.34 58.42 63.5 67.31 71.12", Lengths("children", true, "chest", "2", "4", "6", "8", "10"));

    // Yarnspirations patterns print "to fit bust" XS/S up to 86.5 cm, M 96.5, L 106.5, 4/5XL up to 157.5: the table itself has 86 and 158 from memory.
    [Fact]
    public void Centimetres_are_those_published_not_converted_inches() =>
        Assert.Equal("76 86 96.5 106.5 117 127 137 147 158", Lengths("women", false, "bust", "XS", "S", "M", "L", "1X", "2X", "3X", "4X", "5X"));

    [Theory]
    [InlineData("women")]
    [InlineData("men")]
    [InlineData("children")]
    [InlineData("youth")]
    [InlineData("babies")]
    public void Every_table_has_both_units_and_says_where_its_numbers_are_from(string name)
    {
        foreach (var inInches in (bool[])[false, true])
        {
            var table = BodyTables.Find(name, inInches)!;
            Assert.NotEmpty(table.Source);
            Assert.Contains("from memory", table.Remark, StringComparison.Ordinal);
            Assert.NotEmpty(table.Rows);
            Assert.All(table.Rows, row => Assert.Equal(inInches, row.InInches));
            Assert.All(table.Rows, row => Assert.All(row.Upper.Zip(row.Upper.Skip(1)), pair => Assert.True(pair.First <= pair.Second, $"{name} {row.Name}")));
        }
    }

    [Fact]
    public void A_name_of_the_table_is_a_length_in_the_sizes_of_the_pattern()
    {
        var pattern = Compiled.Whole(Top("sizes M, XL, 3X", "body women, cm", "count hem is stitches for bust")).Clean().Pattern;
        Assert.Equal([174, 211, 247], pattern.FittedCounts.Single().Counts);
        Assert.Equal("bust", Assert.Single(pattern.Measures).Name);
    }

    [Fact]
    public void A_measure_of_ones_own_goes_before_the_table() =>
        Assert.Equal([180, 200], Compiled.Whole(Top("sizes S, M", "body women, cm", "measure bust is 100 cm + 0 (11.1) cm", "count hem is stitches for bust")).Clean().Pattern.FittedCounts.Single().Counts);

    [Fact]
    public void The_table_may_stand_below_what_uses_it() =>
        Assert.Equal([174], Compiled.Whole(Top("sizes M", "count hem is stitches for bust", "body women, cm")).Clean().Pattern.FittedCounts.Single().Counts);

    [Theory]
    [InlineData("body ladies, cm", "body-table")]
    [InlineData("body women, yd", "body-table")]
    [InlineData("body men, cm\nbody women, cm", "said-twice")]
    [InlineData("body babies, cm", "body-size")]
    [InlineData("body \"mine.csv\"", "body-file")]
    public void What_can_not_be_used_is_told_once(string line, string name) =>
        Assert.Equal([name], Compiled.Whole(Top("sizes S, M", line, "count hem is 40 (50)")).Found);

    [Theory]
    [InlineData("source,fitting day\nmeasure,unit,S,M\nbust,cm,81-86,90\n", 155, 162)]
    [InlineData("measure;unit;M;S\nbust;cm;90;\"86\"\n", 155, 162)]
    [InlineData("\uFEFFmeasure,unit,S,M,L\r\n\r\nbust,in,34,35.5,40\r\n", 155, 162)]
    public void A_table_of_ones_own_is_read_from_a_file_beside(string file, int small, int medium)
    {
        var compilation = Compilation.Of(new SourceText("a", Top("sizes S, M", "body \"mine.csv\"", "count hem is stitches for bust")), name => name == "mine.csv" ? file : null);
        Assert.Empty(compilation.Diagnostics);
        Assert.Equal([small, medium], compilation.Pattern.FittedCounts.Single().Counts);
    }

    [Theory]
    [InlineData("", "line 1 of mine.csv")]
    [InlineData("bust,cm,81,90\n", "line 1 of mine.csv can't be used: the line measure,unit")]
    [InlineData("measure,unit,S,M\nbust,cm,81\n", "line 2 of mine.csv can't be used: `bust` does not have one number for each size")]
    [InlineData("measure,unit,S,M\nbust,m,81,90\n", "the unit is `m`")]
    [InlineData("measure,unit,S,M\nbust,cm,81,90\n,,,\nbust,in,31,35\n", "line 4 of mine.csv can't be used: `bust` has a second line")]
    [InlineData("measure,unit,S,M\nbust,cm,81,wide\n", "`wide` is no number")]
    [InlineData("measure,unit,S,M\nbust,cm,81,-90\n", "`-90` is no number")]
    [InlineData("measure,unit,S,M\nbust,cm,81,9999999999\n", "`9999999999` is no number")]
    public void A_file_that_can_not_be_read_is_told_with_its_line(string file, string message)
    {
        var compilation = Compilation.Of(new SourceText("a", Top("sizes S, M", "body \"mine.csv\"", "count hem is stitches for bust")), _ => file);
        Assert.Contains(message, Assert.Single(compilation.Diagnostics).Message, StringComparison.Ordinal);
    }

    private static string Lengths(string table, bool inInches, string measure, params string[] sizes)
    {
        var found = BodyTables.Find(table, inInches)!;
        var row = found.Rows.Single(r => r.Name == measure);
        return string.Join(' ', sizes.Select(size => row.Upper[found.IndexOf(size)]!.Value.ToDouble().ToString("0.##", System.Globalization.CultureInfo.InvariantCulture)));
    }

    private static string Top(params string[] lines) =>
        "gauge dc: 18 stitches and 9 rows to 10 cm\n" + string.Join('\n', lines) + "\npiece back\nbegin with hem stitches\nrow 1 RS: dc across\n";
}
