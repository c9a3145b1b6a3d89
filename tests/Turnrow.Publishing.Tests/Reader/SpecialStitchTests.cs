using Turnrow.Compiler;
using Turnrow.Fabric.Stitches;
using Turnrow.Publishing.Instructions;
using Turnrow.Syntax.Text;
using Xunit;

namespace Turnrow.Publishing.Tests.Reader;

/// <summary>Special stitches, read from what the page explains of them.</summary>
public sealed class SpecialStitchTests
{
    private const string Stitches = """
        pattern "Cloth"
        version 1
        terms US
        hook 4 mm
        turn edc: ch 4 counts
        turn hdc: ch 2 counts
        stitch shell "SH" is (5 dc) in one place
        stitch clam is (4 dc) in one place, centre is 3rd dc
        stitch vee is (dc, ch 1, dc) in one place
        stitch half-shell is (3 dc) in one place
        stitch knot "KN" is 4 dc together in one place
        stitch wing of n is (n tr) in one place
        stitch cross is skip 1, dc in next, dc in skipped
        stitch rope is skip 2, FPtr 2, FPtr 2 in skipped behind
        stitch slant is (sc, dc) together
        stitch wrap "WR" is skip 2, tr in next, ch 1, dc 2 in skipped
        stitch tuft is (sc, ch 2, knot) in one place
        stitch comb is ((dc, ch 1) 4 times, dc) in one place
        stitch lace-shell is (3 dc, picot, 3 dc) in one place
        stitch double-vee is (vee, picot of 4, ch 2, vee) in one place
        stitch wings of n is (2 wing of n, CL, wing of n) in one place
        stitch ridge is (back-loop sc, back-loop hdc, back-loop dc) in one place
        stitch mixed is (front-post dc, back-loop dc, picot, dc) in one place
        stitch ridge-knot is 3 back-loop dc together in one place
        stitch split is (back-loop dc, front-loop dc) together
        stitch furrow is back-loop sc, front-loop sc 2
        stitch cone of n is n tr together in one place
        stitch pair of n is (cone of n, ch 1, cone of n) in one place
        stitch mesh is dc, ch 1, skip 1
        stitch dash is 2 dc in next, skip 1
        stitch hop is skip 1, dc, ch 1
        stitch fence is (shell in next, picot 2, skip 1) 2 times, comb in next

        piece cloth
        """;

    [Theory]
    [InlineData("begin with 25 stitches; row 1 RS: sc across; row 2: sc, (skip 2, shell in next, skip 2, sc) across; row 3: sc across")]
    [InlineData("begin with 25 stitches; row 1 RS: sc across; row 2: sc, (skip 2, shell in next, skip 2, sc) across; row 3: half-shell in first, (sc in next shell, shell in next sc) until 6 remain, sc in next shell, skip 2, half-shell in last; row 4: sc, (shell in next sc, sc in 3rd dc of next shell) 3 times, shell in next sc, skip 2, sc in last; row 5: sc across")]
    [InlineData("begin with 25 stitches; row 1 RS: sc across; row 2: sc, (skip 2, clam in next, skip 2, sc) across; row 3: sc, (ch 2, sc in next clam, ch 2, sc in next sc) across; row 4: sc in each st and sp")]
    [InlineData("begin with 20 stitches; row 1 RS: sc across; row 2: sc 2, (knot, sc 2, bobble of 3, sc, puff, sc, popcorn, sc) 2 times; row 3: sc 3, sc in next PC, sc across; row 4: sc across")]
    [InlineData("begin with 20 stitches; row 1 RS: dc across; row 2: dc 3, cable-behind, dc 2, rope, dc 2, cable, dc; row 3: dc across; row 4: sc across")]
    [InlineData("begin with 20 stitches; row 1 RS: sc across; row 2: dc 2, cross 3, dc 2, slant 2, dc, picot, cable, dc; row 3: spike dc 3, dc across")]
    [InlineData("begin with 20 stitches; row 1 RS: dc across; row 2: dc 3, (vee in next, skip 2) 2 times, wrap, wing of 7 in next, dc across; row 3: dc 3, (dc in next vee) 2 times, dc in each st")]
    [InlineData("begin with 20 stitches; row 1 RS: dc across; row 2: dc, vee in each st until 1 remains, dc; row 3: dc, wing of 3 in each vee, skip 1, dc")]
    [InlineData("begin with 20 stitches; row 1 RS: edc across; row 2: edc across; row 3: ldc across; row 4: esc 4, ltr 2, edc across")]
    [InlineData("begin with 20 stitches; row 1 RS: (knot, sc) across; row 2: (bobble, dc) across; row 3: puff, dc across")]
    [InlineData("begin with 20 stitches; row 1 RS: dc across; row 2: vee in first, (skip 2, vee in next) 6 times, dc; row 3: dc, (dc in next vee) 7 times, dc in last")]
    [InlineData("begin with 20 stitches; row 1 RS: shell in first, skip 2, tuft in next, skip 2, (shell, ch 1, shell) in next, skip 2, sc across; row 2: sc in each st and sp")]
    [InlineData("begin with 20 stitches; row 1 RS: sc across; row 2: sc across; row 3: (sc, spike sc, spike-2 sc, sc, picot of 4) across; row 4: V-st, skip 1, crossed 8, dc 2")]
    [InlineData("begin with 20 stitches; round 1: edc 9, (knot, edc 2) 3 times, edc 2; round 2: slip over 1, edc across")]
    [InlineData("begin with 20 stitches; round 1: sc around; round 2: shell in first, skip 2, (sc, skip 2, shell, skip 2) 2 times, sc 5; round 3: sc around; round 4: rsc around")]
    [InlineData("begin with 20 stitches; row 1 RS: dc across; row 2: comb in first, skip 4, (comb, ch 2, lace-shell) in next, skip 4, dc across; row 3: sc, sc in 2nd dc of next comb, sc in each st and sp")]
    [InlineData("begin with 20 stitches; row 1 RS: dc across; row 2: lace-shell in first, skip 4, sc in next, (skip 3, double-vee in next, skip 3) 2 times; row 3: sc, sc in next double-vee, sc in each st and sp")]
    [InlineData("begin with 20 stitches; row 1 RS: dc across; row 2: dc, wings of 2 in next, fence 2, wings of 3 in next, dc across; row 3: sc in each st and sp")]
    [InlineData("begin with 20 stitches; row 1 RS: dc across; row 2: ((dc, ch 1) 4 times, dc) in first, skip 6, ((2 dc, picot) 3 times, 2 dc) in next, skip 6, (((dc, ch 1) 3 times, dc, ch 4) 3 times, dc) in next, dc across; row 3: sc in each st and sp")]
    [InlineData("begin with ring; round 1: ((dc, ch 1) 3 times, dc, ch 3) 3 times in ring; round 2: (skip 7, ((dc, ch 1) 3 times, dc) in next sp) around")]
    [InlineData("begin with ring of 4 chains; round 1: (3 dc, ch 2, mark corner) 4 times in ring; round 2: ((dc, ch 1) to corner, (2 dc, ch 2, 2 dc) in corner) around, (dc, ch 1) around; round 3: (dc in each st and sp to corner, (2 dc, ch 2, 2 dc) in corner) around, dc in each st and sp; round 4: (sc in each st and sp until 2 remain before corner, sc 2, 3 sc in corner) around, sc around")]
    [InlineData("begin with ring of 4 chains; round 1: (3 dc, ch 2, mark corner) 4 times in ring; round 2: ((dc, ch 1) to corner, (2 dc, ch 2, 2 dc) in corner) around, (dc, ch 1) around; round 3: (dc in each st to corner, ((dc, ch 1) 3 times, dc) in corner) around, dc in each st; round 4: (sc in each st and 2 sc in each sp to corner, 3 sc in corner) around, sc in each st")]
    [InlineData("begin with ring; rounds are spiral; round 1: (3 hdc, ch 2, ch 2) 6 times in ring; round 2: hdc in each sp; rounds 3 to 6: hdc across")]
    [InlineData("begin with 20 stitches; row 1 RS: dc across; row 2: dc, ridge in next, mixed in next, (back-loop dc, ch 1, 2 back-loop dc) in next, (front-post dc, front-loop dc) in next, ridge-knot, split, furrow, dc across; row 3: dc in each st and sp")]
    [InlineData("begin with 20 stitches; row 1 RS: dc across; row 2: mesh 9, dc 2; row 3: dc in each st and sp; row 4: dash 9, dc 2; row 5: dc in each st; row 6: hop 9, dc 2; row 7: dc in each st and sp")]
    [InlineData("begin with 20 stitches; round 1: dc around; round 2: mesh around; round 3: dc in each st and sp; round 4: dash around; round 5: hop around; round 6: dc in each st and sp")]
    [InlineData("begin with 20 stitches; row 1 RS: dc across; row 2: dc 2, pair of 3 in next, dc 2, pair of 2 in next, pair of 2 in next, dc across; row 3: dc 2, sc in next pair, dc in each st and sp")]
    public void They_read_back_in_both_terms(string lines)
    {
        var notation = Stitches + "\n  " + string.Join("\n  ", lines.Split("; ")) + "\n";
        var compilation = Compilation.Of(new SourceText("cloth.turnrow", notation));
        Assert.Equal([], compilation.Diagnostics.Select(d => d.Message));
        foreach (var terms in new[] { Terms.US, Terms.UK })
        {
            var page = WrittenInstructions.Write(compilation.Pattern, terms);
            var found = ReadBack.Differences(compilation.Pattern, page);
            Assert.True(found.Count == 0, $"{string.Join('\n', found.Take(5))}\n{page}");
        }
    }
}
