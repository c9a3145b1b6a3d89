using Turnrow.Syntax.Diagnostics;
using Turnrow.Syntax.Text;

namespace Turnrow.Compiler.Diagnostics.Kinds;

/// <summary>A yarn that is taken up, and nothing is worked with it.</summary>
public static class YarnNothing
{
    /// <summary>Its name, code and page.</summary>
    public static readonly DiagnosticKind Kind = new(
        "yarn-nothing",
        "TR0495",
        Severity.Error,
        """
        `with cream` says what is worked from there on. Here nothing follows before the row ends, before the next yarn is taken up or before the
        piece ends, so that one of the two lines or words is a slip. A row that begins with another yarn says so at its own beginning, or in a line
        above it; that the change is made in the last yarn over of the stitch before is written for you.
        """,
        SmallPattern.With("Scarf",
            """
            yarn navy "soft wool"
            yarn cream "soft wool"

            piece scarf
              begin with 24 stitches
              row 1 RS: sc across, with cream
              row 2: sc across
            """),
        SmallPattern.With("Scarf",
            """
            yarn navy "soft wool"
            yarn cream "soft wool"

            piece scarf
              begin with 24 stitches
              row 1 RS: sc across
              row 2: with cream, sc across
            """));

    internal static Diagnostic Line(TextSpan span, string yarn) => new(Kind, span, $"no row is worked with {yarn} here")
    {
        Help = "take the line out, or put it above the rows that it is for",
    };

    internal static Diagnostic AtEnd(TextSpan span, string yarn) => new(Kind, span, $"the row ends here, and nothing of it is worked with {yarn}")
    {
        Help = $"let the next row begin with it, `row: with {yarn}, …`, or write `with {yarn}` in a line between",
    };

    internal static Diagnostic AtKeyEnd(TextSpan span, string yarn) => new(Kind, span, $"the key ends here, and nothing of it is worked with {yarn}")
    {
        Help = $"give the other keys their yarn, `key \".\" is (with {yarn}, sc)`, and each square has its own",
    };

    internal static Diagnostic Twice(TextSpan span, string yarn, string next) => new(Kind, span, $"nothing is worked with {yarn} before {next} is taken up")
    {
        Help = "take one of the two out, or say between them what is worked",
    };
}
