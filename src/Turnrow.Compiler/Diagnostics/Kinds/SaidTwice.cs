using Turnrow.Syntax.Diagnostics;
using Turnrow.Syntax.Text;
using Turnrow.Syntax.Tree;

namespace Turnrow.Compiler.Diagnostics.Kinds;

/// <summary>A line of the header that stands twice.</summary>
public static class SaidTwice
{
    /// <summary>Its name, code and page.</summary>
    public static readonly DiagnosticKind Kind = new(
        "said-twice",
        "TR0220",
        Severity.Error,
        """
        A pattern has one title, one version, one hook, one line of sizes. This line says such a thing a second time, and the maker would
        not know which one to believe; the first is used for now. Take one of the two out.

        Tip: a second hook size, for a border say, is told to the maker in a line that begins with `>`.
        """,
        SmallPattern.With("Coaster",
            """
            hook 5 mm

            piece coaster
              begin with 20 stitches
              row 1 RS: dc across
            """),
        SmallPattern.With("Coaster",
            """
            > Work the border with a 5 mm hook.

            piece coaster
              begin with 20 stitches
              row 1 RS: dc across
            """));

    internal static Diagnostic At(StatementSyntax statement, TextSpan first)
    {
        var word = Word(statement);
        return new(Kind, statement.Span, $"a pattern has one `{word}` line, and this is the second")
        {
            Help = "take one of the two out",
            Related = [new Related(first, "the first is here")],
        };
    }

    private static string Word(StatementSyntax statement) => statement switch
    {
        NotationStatement => "notation",
        PatternStatement => "pattern",
        VersionStatement => "version",
        SkillStatement => "skill",
        WearerStatement => "wearer",
        HookStatement => "hook",
        TermsStatement => "terms",
        ClaimsStatement => "claims",
        BodyStatement => "body",
        _ => "sizes",
    };
}
