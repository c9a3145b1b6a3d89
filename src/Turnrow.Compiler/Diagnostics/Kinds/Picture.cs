using Turnrow.Syntax.Diagnostics;
using Turnrow.Syntax.Text;
using static System.FormattableString;

namespace Turnrow.Compiler.Diagnostics.Kinds;

/// <summary>A picture that can't be worked.</summary>
public static class Picture
{
    /// <summary>Its name, code and page.</summary>
    public static readonly DiagnosticKind Kind = new(
        "picture",
        "TR0461",
        Severity.Error,
        """
        A stitch pattern from a picture has lines between bars, `| . x x . |`, whose bottom one is the first row, and a key for each letter:
        `key "x" is (dc 3)`. A letter is as wide below as above, a space as wide as its chains: `(ch 2, skip 2, dc)` and `(dc 3)` are both three
        wide. `key first is (dc)` says what each row begins with, `key last is (dc)` what it ends with. The heading's multiple is the width of the
        picture, and what it adds is what stands at the beginning and the end of the rows. The message says which of this is not so.
        """,
        SmallPattern.With("Filet square",
            """
            stitch pattern squares from picture, over multiple of 6 + 1
              key first is (dc)
              key "." is (ch 2, skip 2, dc)
              | . x |
              | x . |

            piece square
              begin with 19 stitches
              straight 4 rows, in squares
            """),
        SmallPattern.With("Filet square",
            """
            stitch pattern squares from picture, over multiple of 6 + 1
              key first is (dc)
              key "." is (ch 2, skip 2, dc)
              key "x" is (dc 3)
              | . x |
              | x . |

            piece square
              begin with 19 stitches
              straight 4 rows, in squares
            """));

    internal static Diagnostic Line(TextSpan span) => new(Kind, span, "a stitch pattern from a picture has no rows in words")
    {
        Help = "draw them all, or write them all in words",
    };

    internal static Diagnostic Unsaid(TextSpan span) => new(Kind, span, "the heading does not say that this stitch pattern is a picture")
    {
        Help = "write `from picture, over multiple of …` behind its name",
    };

    internal static Diagnostic Empty(TextSpan span, string name) => new(Kind, span, $"{name} has no picture")
    {
        Help = "draw its rows below, a line each, the top line last in working: `| . x x . |`",
    };

    internal static Diagnostic Large(TextSpan span, int rows, int cells) => new(Kind, span, Invariant($"a picture can have {rows} rows, and {cells} letters in all"))
    {
        Help = "draw one repeat of it",
    };

    internal static Diagnostic Word(TextSpan span) => new(Kind, span, "a letter stands for stitches, chains and `skip` with their numbers")
    {
        Help = "write such as `(ch 2, skip 2, dc)` or `(dc 3)`; over a space of the row below, the stitches go into the space by themselves",
    };

    internal static Diagnostic Columns(TextSpan span, int takes, int makes) => new(Kind, span, Invariant($"this is {takes} wide below and {makes} above"))
    {
        Help = "a letter makes as much as it is worked over: `(ch 2, skip 2, dc)` is three wide, `(dc 3)` too",
    };

    internal static Diagnostic Twice(TextSpan span, string letter, TextSpan first) => new(Kind, span, $"`{letter}` has a key already")
    {
        Help = "take another letter, or remove one of the two lines",
        Related = [new Related(first, "first here")],
    };

    internal static Diagnostic Letter(TextSpan span, string letter, IEnumerable<string> known)
    {
        var others = string.Join(", ", known.Select(static k => $"`{k}`"));
        return new(Kind, span, $"no key says what `{letter}` stands for")
        {
            Help = $"write a line such as `key \"{letter}\" is (dc 3)`" + (others.Length > 0 ? $"; there are keys for {others}" : string.Empty),
        };
    }

    internal static Diagnostic Uneven(TextSpan span, int width, int other, TextSpan first) =>
        new(Kind, span, Invariant($"this row of the picture is {Counted.Stitches(width)} wide, and the top one {other}"))
        {
            Help = "all rows of a picture are as wide",
            Related = [new Related(first, "the top row")],
        };

    internal static Diagnostic Width(TextSpan span, int width, int edges, int multiple, int plus) =>
        new(Kind, span, Invariant($"the picture is {Counted.Stitches(width)} wide, with {edges} at the ends of its rows, and the heading says {multiple} + {plus}"))
        {
            Help = Invariant($"write `over multiple of {width}{(edges > 0 ? Invariant($" + {edges}") : string.Empty)}`; what each row begins and ends with is said by `key first` and `key last`"),
        };

    internal static Diagnostic InsideSpace(TextSpan span, bool again) =>
        new(Kind, span, "a letter of this row begins inside a space of the row below" + (again ? ", when the picture comes the second time" : string.Empty))
        {
            Help = "let the spaces of neighbouring rows begin at the same stitches: each is worked into or passed over as a whole",
        };
}
