using Turnrow.Fabric.Words;
using Turnrow.Syntax.Diagnostics;
using Turnrow.Syntax.Text;
using static System.FormattableString;

namespace Turnrow.Compiler.Diagnostics.Kinds;

/// <summary>A stitch into a loop or round a post that goes to a space.</summary>
public static class SpaceWithoutLoops
{
    /// <summary>Its name, code and page.</summary>
    public static readonly DiagnosticKind Kind = new(
        "space-without-loops",
        "TR0606",
        Severity.Error,
        """
        A loop and a post are parts of a stitch. A space is the gap under a chain: the hook goes under the whole chain, and there is neither a post
        to go round nor a loop to take alone. Work into the space as it is, or say which stitch beside it is meant: `front-post dc in next dc`.
        """,
        SmallPattern.With("Net scarf",
            """
            piece scarf
              begin with 31 stitches
              row 1 RS: dc across
              row 2: dc, (ch 1, skip 1, dc) across
              row 3: dc, (front-post dc in next sp, dc in next dc) across
            """),
        SmallPattern.With("Net scarf",
            """
            piece scarf
              begin with 31 stitches
              row 1 RS: dc across
              row 2: dc, (ch 1, skip 1, dc) across
              row 3: dc, (dc in next sp, front-post dc in next dc) across
            """));

    internal static Diagnostic At(Context context, TextSpan span, int[] sizes, string word, RowFault fault) =>
        new(Kind, span, Invariant($"`{word}` goes to a ch-{fault.There} space, which has no {(IsPost(fault.Word) ? "post" : "loops of its own")}{context.Findings.InSizes(sizes)}"))
        {
            Sizes = context.Findings.Names(sizes),
            Help = "go under the whole chain, `dc in next sp`, or name the stitch that is meant, `front-post dc in next dc`",
        };

    private static bool IsPost(Word? word) => word switch
    {
        Work work when work.Hook.NeedsStitch() => work.Hook is HookInto.FrontPost or HookInto.BackPost,
        Work { Stitch.Form: { } form } => form.Parts.Any(static part => part.Hook is HookInto.FrontPost or HookInto.BackPost),
        Group group => group.Words.Any(IsPost),
        _ => false,
    };
}
