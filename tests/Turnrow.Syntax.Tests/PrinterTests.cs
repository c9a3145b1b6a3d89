using System.Text;
using Turnrow.Syntax.Diagnostics;
using Turnrow.Syntax.Text;
using Xunit;

namespace Turnrow.Syntax.Tests;

/// <summary>A diagnostic as a person sees it.</summary>
public sealed class PrinterTests
{
    private static readonly DiagnosticKind Error = new("row-count", "TR9901", Severity.Error, "", "", "");
    private static readonly DiagnosticKind Warning = new("edge-twice", "TR9902", Severity.Warning, "", "", "");

    private static readonly SourceText Lattice = new(
        "lattice.turnrow",
        "piece back\n  row 4: dc across = 84\n\trow 5: (dc 4, inc) across\n> 漢字 and e\u0301: ( dc\n"
        + "row 6: " + string.Concat(Enumerable.Repeat("dc 5, ", 60)) + "(dc 4, inc) across, "
        + string.Concat(Enumerable.Repeat("dc 5, ", 60)) + "dc\nrow 7: dc 3,\n    dc 4,\n    inc,\n  dc\nrow 8: \u001b[31m\u202E dc\n");

    [Fact]
    public void Everything_that_can_be_said_stands_in_its_place()
    {
        var whole = Of(Error, "(dc 4, inc) across", "the repeat does not come out in L, 1X and 2X") with
        {
            Ledger = ["in L there are 84 stitches (row 4, line 2)", "    (dc 4, inc) 16 times      takes 80   makes 96", "    left over                        4"],
            Sizes = ["L", "1X", "2X"],
            Help = "a multiple of 5 fits: 80 or 85 in L; or work the rest plain: (dc 4, inc) until 4 remain, dc across",
            Mends = [new Mend("work the rest plain", default, "(dc 4, inc) until 4 remain, dc across"), new Mend("claim 80", default, "80")],
            Related = [new Related(Find("84"), "the 84 comes from here")],
        };
        var text = new StringBuilder();
        foreach (var diagnostic in new[]
        {
            whole,
            Of(Warning, "( dc", "wide letters and accents take their columns"),
            Of(Error, "(dc 4, inc) across, dc", "a long line is cut round the place"),
            Of(Error, "piece back", "nothing more to say"),
            new Diagnostic(Error, new TextSpan(Find("= 84").End, 0), "a place without length, at a line's end"),
            new Diagnostic(Error, Find("3,").To(Find("inc,\n  dc")), "four lines"),
            Of(Error, "dc\n", "nothing that moves the cursor or turns the text round is printed: \u001b[31m\u202E"),
        })
        {
            text.Append(DiagnosticPrinter.Print(diagnostic, Lattice)).Append('\n');
        }

        Golden.Matches("tests/Turnrow.Syntax.Tests/Golden/printer.txt", text.ToString());
    }

    [Fact]
    public void Colour_changes_nothing_but_colour()
    {
        var diagnostic = Of(Error, "(dc 4, inc)", "red") with { Help = "blue", Related = [new Related(Find("84"), "here")] };
        var coloured = DiagnosticPrinter.Print(diagnostic, Lattice, colour: true);
        Assert.StartsWith("\u001b[1;31merror\u001b[0m ", coloured, StringComparison.Ordinal);
        var plain = System.Text.RegularExpressions.Regex.Replace(coloured, "\u001b\\[[0-9;]*m", "");
        Assert.Equal(DiagnosticPrinter.Print(diagnostic, Lattice), plain);
    }

    [Fact]
    public void They_are_ordered_by_place_then_code_then_as_found()
    {
        Diagnostic[] found =
        [
            new(Warning, new TextSpan(5, 1), "c"), new(Error, new TextSpan(5, 1), "a"), new(Error, new TextSpan(5, 9), "b"), new(Warning, new TextSpan(1, 1), "first"),
        ];
        Assert.Equal(["first", "a", "b", "c"], DiagnosticOrder.ByPosition(found).Select(one => one.Message));
    }

    private static Diagnostic Of(DiagnosticKind kind, string words, string message) => new(kind, Find(words), message);

    private static TextSpan Find(string words) => new(Lattice.Text.IndexOf(words, StringComparison.Ordinal), words.TrimEnd().Length);
}
