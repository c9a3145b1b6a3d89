using Xunit;

namespace Turnrow.Compiler.Tests.Annotated;

/// <summary>Every pattern of the repository, with what the compiler found under each line.</summary>
public sealed class AnnotatedPatternTests
{
    public static TheoryData<string> Patterns =>
        [.. Repository.PatternNames];

    [Theory]
    [MemberData(nameof(Patterns))]
    public void A_pattern_s_lines_make_the_rows_that_were_read_over(string name)
    {
        var file = name + ".turnrow";
        var made = AnnotatedRows.Of(file, File.ReadAllText(Repository.PathOf("patterns/" + file)));
        Golden.Matches($"patterns/{name}/{name}.rows.txt", made);
    }
}
