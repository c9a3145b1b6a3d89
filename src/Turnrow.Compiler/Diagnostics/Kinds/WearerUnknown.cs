using Turnrow.Syntax.Diagnostics;
using Turnrow.Syntax.Text;

namespace Turnrow.Compiler.Diagnostics.Kinds;

/// <summary>A wearer that is not known.</summary>
public static class WearerUnknown
{
    /// <summary>Its name, code and page.</summary>
    public static readonly DiagnosticKind Kind = new(
        "wearer-unknown",
        "TR0223",
        Severity.Error,
        """
        The `wearer` line says for whom the garment is, so that the cautions for babies and children (no long cords, no loose buttons)
        stand in the printed pattern where they are needed. It knows an `adult`, a `child` and a `baby`. Take the nearest; the age itself
        can stand in the sizes' names, `"6-9 months"`.
        """,
        SmallPattern.With("Hat",
            """
            wearer toddler

            piece brim
              begin with 60 stitches
              row 1 RS: dc across
            """),
        SmallPattern.With("Hat",
            """
            wearer child

            piece brim
              begin with 60 stitches
              row 1 RS: dc across
            """));

    internal static Diagnostic At(TextSpan span, string word) =>
        new(Kind, span, $"the wearer is an adult, a child or a baby, not `{word}`")
        {
            Help = "write `child` or `baby`, and the cautions for them are printed; or `adult`",
            Mends = [new Mend("write child", span, "child"), new Mend("write baby", span, "baby"), new Mend("write adult", span, "adult")],
        };
}
