using CsCheck;
using Turnrow.Compiler;
using Turnrow.Compiler.Tests.Naive;
using Turnrow.Fabric.Stitches;
using Turnrow.Publishing.Instructions;
using Turnrow.Syntax.Text;
using Xunit;

namespace Turnrow.Publishing.Tests.Reader;

/// <summary>Random patterns, published and read back in all their sizes.</summary>
public sealed class RandomPatternTests
{
    [Fact]
    public void Random_patterns_read_back_in_every_size() => NaiveGen.Valid.Sample(
        pattern =>
        {
            var notation = NotationWriter.Write(pattern);
            var compiled = Compilation.Of(new SourceText("random.turnrow", notation)).Pattern;
            var found = ReadBack.Differences(compiled, WrittenInstructions.Write(compiled, Terms.US));
            Assert.True(found.Count == 0, string.Join('\n', found.Take(5)));
        },
        iter: 500,
        threads: 1,
        print: NotationWriter.Write);

    [Fact]
    public void Survey()
    {
        var texts = new Dictionary<string, List<string>>();
        var n = 0;
        NaiveGen.Valid.Sample(
            pattern =>
            {
                n++;
                var notation = NotationWriter.Write(pattern);
                var compiled = Compilation.Of(new SourceText("random.turnrow", notation)).Pattern;
                string page;
                try
                {
                    page = WrittenInstructions.Write(compiled, Terms.US);
                }
                catch (ArgumentOutOfRangeException)
                {
                    page = "";
                }

                foreach (var d in page == "" ? ["crash"] :  ReadBack.Differences(compiled, page))
                {
                    if (d.Contains("there is no piece", StringComparison.Ordinal)) continue;
                    var why = System.Text.RegularExpressions.Regex.Replace(d.Split('\n')[0], @"\d+", "#");
                    why = System.Text.RegularExpressions.Regex.Replace(why, @"\b(sc|hdc|dc|tr)\b", "dc");
                    why = System.Text.RegularExpressions.Regex.Replace(why, @" \(size .*|^[A-Z][a-z]+: |Back|Front|Sleeve|Cuff|Collar|Pocket", "");
                    if (why.Length > 90) why = why[..90];
                    if (!texts.TryGetValue(why, out var list)) texts[why] = list = [];
                    list.Add(d + "\n" + notation[(notation.IndexOf("turn", StringComparison.Ordinal) is var t and > 0 ? t : 0)..] + page[(page.IndexOf("## Instr", StringComparison.Ordinal) is var q and > 0 ? q : 0)..] + "\n");
                }
            },
            iter: 2000,
            threads: 1);
        File.WriteAllText("/tmp/survey.txt", $"{n}\n" + string.Join('\n', texts.OrderByDescending(t => t.Value.Count).Select(t => $"== {t.Value.Count} {t.Key}\n" + string.Join("", t.Value.OrderBy(x => x.Length).Take(2)))));
    }
}
