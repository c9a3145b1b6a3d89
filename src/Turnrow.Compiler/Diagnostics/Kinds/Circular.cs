using Turnrow.Syntax.Diagnostics;
using Turnrow.Syntax.Text;
using static System.FormattableString;

namespace Turnrow.Compiler.Diagnostics.Kinds;

/// <summary>Definitions that need each other.</summary>
public static class Circular
{
    /// <summary>Its name, code and page.</summary>
    public static readonly DiagnosticKind Kind = new(
        "circular",
        "TR0209",
        Severity.Error,
        """
        Numbers are made of each other in a circle: the hem needs the waist, and the waist needs the hem. There is no beginning to count
        from, so none of them can be known. Give one of them a number of its own, from the body or from your swatch, and let the others
        follow from it.
        """,
        SmallPattern.With("Skirt yoke",
            """
            count hem is waist + 20
            count waist is hem - 20

            piece yoke
              begin with hem stitches
              row 1 RS: dc across
            """),
        SmallPattern.With("Skirt yoke",
            """
            count hem is 120
            count waist is hem - 20

            piece yoke
              begin with hem stitches
              row 1 RS: dc across
            """));

    private const int MostShown = 8;

    internal static Diagnostic At(TextSpan span, IReadOnlyList<string> circle, TextSpan later) =>
        new(Kind, span, circle.Count switch
        {
            1 => $"`{circle[0]}` is made of itself",
            2 => $"`{circle[0]}` is made of `{circle[1]}`, and `{circle[1]}` of `{circle[0]}`",
            _ => $"{Shown(circle)} are made of each other in a circle",
        })
        {
            Help = circle.Count == 1 ? "give it a number" : "give one of them a number; the others can follow from it",
            Related = circle.Count == 1 ? [] : [new Related(later, $"`{circle[0]}` is made here")],
        };

    private static string Shown(IReadOnlyList<string> circle) => circle.Count <= MostShown
        ? Findings.Join([.. circle.Select(n => $"`{n}`")])
        : Invariant($"`{circle[0]}`, `{circle[1]}` … `{circle[^1]}`, {circle.Count} names in all,");
}
