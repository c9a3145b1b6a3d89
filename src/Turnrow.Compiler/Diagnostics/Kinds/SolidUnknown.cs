using Turnrow.Fabric.Solids;
using Turnrow.Syntax.Diagnostics;
using Turnrow.Syntax.Tree;

namespace Turnrow.Compiler.Diagnostics.Kinds;

/// <summary>A body, or a word behind it, that there is not.</summary>
public static class SolidUnknown
{
    /// <summary>Its name, code and page.</summary>
    public static readonly DiagnosticKind Kind = new(
        "solid-unknown",
        "TR0470",
        Severity.Error,
        """
        The bodies that can be worked out are sphere, dome, egg, cone, cylinder and ring. Behind a comma may stand `closing`, for one that is worked
        from its wide end to its point; `closed`, for a dome, cone or cylinder whose open end is closed too; `staggered`; and what the counts are
        multiples of. Any other body is made of these, or of `shape` lines: a head of a dome, some plain rounds and a closing dome.
        """,
        SmallPattern.With("Ball",
            """
            gauge sc: 20 stitches and 20 rows to 10 cm

            piece ball
              begin with 6 stitches
              round 1: sc around
              solid ball 10 cm across
            """),
        SmallPattern.With("Ball",
            """
            gauge sc: 20 stitches and 20 rows to 10 cm

            piece ball
              begin with 6 stitches
              round 1: sc around
              solid sphere 10 cm across
            """));

    internal static Diagnostic At(NameSyntax name) =>
        new(Kind, name.Span, $"there is no body `{name.Text}` to be worked out")
        {
            Help = $"there are {string.Join(", ", SolidShape.All.Select(static shape => shape.Name))}",
        };

    internal static Diagnostic Word(NameSyntax word, SolidShape shape) =>
        new(Kind, word.Span, $"a {shape.Name} can't be `{word.Text}`")
        {
            Help = shape.FromPole ? "`closing` works it from its wide end to its point; `closed` closes the open end of a dome, cone or cylinder"
                : "leave it out: it begins and ends at its inner side, and the two are sewn together",
        };
}
