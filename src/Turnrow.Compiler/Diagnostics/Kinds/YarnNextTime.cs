using Turnrow.Compiler.Colours;
using Turnrow.Syntax.Diagnostics;
using Turnrow.Syntax.Text;

namespace Turnrow.Compiler.Diagnostics.Kinds;

/// <summary>A bracket that begins with another yarn from its second time on.</summary>
public static class YarnNextTime
{
    /// <summary>Its name, code and page.</summary>
    public static readonly DiagnosticKind Kind = new(
        "yarn-next-time",
        "TR0605",
        Severity.Warning,
        """
        A bracket is worked again from its beginning, with the yarn that is in the hand then. Where it takes up a yarn further on and does not go
        back, its first stitches have one colour the first time and another ever after: (sc 2, with cream, sc 2) across is 2 navy stitches and then
        cream alone. Begin the bracket with its own yarn: (with navy, sc 2, with cream, sc 2) across. Where the colour is meant to change for good, say
        the first time by itself, or accept it with the reason, `accept yarn-next-time of scarf: "cream from the first dot on"`.
        """,
        SmallPattern.With("Scarf",
            """
            yarn navy "soft wool"
            yarn cream "soft wool"

            piece scarf
              begin with 24 stitches
              row 1 RS: sc across
              row 2: (sc 2, with cream, sc 2) across
            """),
        SmallPattern.With("Scarf",
            """
            yarn navy "soft wool"
            yarn cream "soft wool"

            piece scarf
              begin with 24 stitches
              row 1 RS: sc across
              row 2: (with navy, sc 2, with cream, sc 2) across
            """));

    internal static Diagnostic At(BracketYarn found, string? before) => new(Kind, found.Bracket.Span, $"{What(before)} is {found.First} the first time, and {found.Next} from the second time on")
    {
        Help = $"begin the bracket with its yarn, `({found.Mended}…)`; if {found.Next} is meant to stay, write the first time before the bracket",
        Mends = [new Mend($"begin each time with {found.First}", found.Place, found.Mended)],
    };

    internal static Diagnostic InPattern(TextSpan span, string pattern, BracketYarn found, string? before) => new(Kind, span, $"in a bracket of {pattern}, {What(before)} is {found.First} the first time, and {found.Next} from the second time on")
    {
        Help = $"begin that bracket with its yarn, `({found.Mended}…)`",
    };

    private static string What(string? before) => before is null ? "what the bracket begins with" : $"`{before}`";
}
