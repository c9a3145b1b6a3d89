using Xunit;

namespace Turnrow.Cli.Tests;

/// <summary>The report that <c>build</c> writes for the designer alone.</summary>
public sealed class DesignersReportTests : IDisposable
{
    private const string Reason = "the shoulders are dropped";

    private const string Top =
        $"""
        notation 1
        pattern "Dunlin Top"
        terms US
        sizes S, M
        yarn main "wool", weight 4, 100 g, 200 m, 10 % extra
        hook 4 mm
        gauge dc: 20 stitches and 10 rows to 10 cm
        swatch dc: 20 stitches and 10 rows weigh 5 g
        body women, cm
        ease bust is close
        accept fit-cross-back: "{Reason}"

        piece back
          begin with 90 (100) stitches
          row 1 RS: dc across
          straight 59 rows
          finished bust is 2 x back stitches
          finished cross-back is back stitches
          finished neck-opening is 105 stitches, stretches by 10 %
          finished wrist is 17 cm, opens
          finished hip-length is 40 cm

        made S: back 46.5 cm wide
        """;

    private readonly ScratchFolder _folder = new();

    public void Dispose() => _folder.Dispose();

    [Fact]
    public void It_has_the_fit_what_is_accepted_what_is_open_the_yarn_and_the_sample()
    {
        Assert.Equal(
            """
            # Dunlin Top: the designer's report

            For the designer alone: nothing of this page is in the pattern.

            ## Finished measures, bodies and ease

            | measure | S | M |
            | --- | --: | --: |
            | bust, finished, cm | 90 | 100 |
            | bust, body, cm | 86 | 96.5 |
            | bust, ease, cm | +4 | +3.5 |
            | cross-back, finished, cm | 45 | 50 |
            | cross-back, body, cm | 38 | 40.5 |
            | cross-back, ease, cm | +7 | +9.5 |
            | neck-opening, finished (stretches by 10 %), cm | 52.5 | 52.5 |
            | head, body, cm | 57 | 57 |
            | neck-opening, difference, cm | -4.5 | -4.5 |
            | wrist, finished (opens), cm | 17 | 17 |
            | hip-length, finished, cm | 40 | 40 |
            | hip-length, body, cm | 58 | 58.5 |
            | hip-length, difference, cm | -18 | -18.5 |

            Bodies by standard body measurements for women (numbers from memory).

            ## Accepted

            - line 18, `fit-cross-back`: the finished cross-back is 45 cm in S, 7 cm wider than the cross-back of 38 cm: the armholes hang down the arms. Accepted: the shoulders are dropped

            ## Open

            no errors, 2 warnings; `turnrow check` shows all of it.
            - line 21, `fit-length`: the finished hip-length is 40 cm in S, 18 cm shorter than the hip-length of 58 cm: it ends higher than it is called
            - line 23, `made-off`: the sample's back is 46.5 cm wide in S, 1.5 cm wider than the 45 cm by the gauge

            ## Yarn

            `main`: 148.5 (165) g, 10 % of it added for seams and ends.

            ## The finished sample

            ```text
              the finished sample, beside what its stitches and rows are by the gauge:
                back in S: 46.5 cm wide (1.5 cm more than 45)
              so its true gauge is:
                dc: 19.4 stitches to 10 cm (the gauge line says 20)
              and worked like that each size will measure:
                back: 46.5 (51.7) cm wide, 60 cm high
                (heights of dc: by the gauge line, since the sample does not tell)
            ```

            """,
            Built(Top));
    }

    [Fact]
    public void Nothing_of_it_is_published()
    {
        Built(Top);
        foreach (var path in Directory.EnumerateFiles(Path.Combine(_folder.Path, "out")).Where(path => !path.EndsWith(".report.md", StringComparison.Ordinal)))
        {
            var text = File.ReadAllText(path);
            Assert.DoesNotContain(Reason, text, StringComparison.OrdinalIgnoreCase);
            Assert.DoesNotContain("fit-cross-back", text, StringComparison.Ordinal);
            Assert.DoesNotContain("report", text, StringComparison.OrdinalIgnoreCase);
        }
    }

    [Fact]
    public void A_pattern_that_says_little_has_a_report_that_says_so()
    {
        var report = Built("pattern \"A | B\"\npiece a\nbegin with 4 stitches\nrow 1: sc across\n");
        Assert.StartsWith("# A \\| B: the designer's report\n", report, StringComparison.Ordinal);
        Assert.Contains("Nothing is stated", report, StringComparison.Ordinal);
        Assert.Contains("No warning is accepted.", report, StringComparison.Ordinal);
        Assert.Contains("No yarn is named.", report, StringComparison.Ordinal);
        Assert.Contains("Nothing is measured", report, StringComparison.Ordinal);
    }

    [Fact]
    public void Yarn_without_a_swatch_is_missing() =>
        Assert.Contains("`main`: not worked out. Weigh a swatch of sc, `swatch … weigh … g`.", Built("yarn main, 50 g\npiece a\nbegin with 4 stitches\nrow 1: sc across\n"), StringComparison.Ordinal);

    private string Built(string text)
    {
        InProcess.Turnrow("build", _folder.Write("top.turnrow", text), "--out", Path.Combine(_folder.Path, "out"));
        return File.ReadAllText(Path.Combine(_folder.Path, "out", "top.report.md"));
    }
}
