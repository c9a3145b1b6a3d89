using Turnrow.Compiler.Diagnostics.Kinds;
using Turnrow.Fabric.Stitches;
using Turnrow.Syntax.Tree;

namespace Turnrow.Compiler.Header;

/// <summary>Finds in which terms a file is written, before any of its words is understood.</summary>
internal static class TermsFinder
{
    /// <summary>The terms, and whether the line that says them could not be read.</summary>
    public static Terms Find(SyntaxTree tree, UnreadLines unread, Findings findings, out bool inDoubt)
    {
        inDoubt = false;
        TermsStatement? first = null;
        foreach (var line in tree.Lines)
        {
            if (line.Statement is not TermsStatement statement) continue;
            if (first is not null)
            {
                findings.Add(SaidTwice.At(statement, first.Span));
                continue;
            }

            first = statement;
            inDoubt = line.Broken;
            if (IsUs(statement) || IsUk(statement)) continue;
            if (!line.Broken) findings.Add(TermsUnknown.At(statement.Terms.Span, statement.Terms.Text));
            inDoubt = true;
        }

        // A line that can't be told may be the one that says the terms, unless another says them.
        if (first is null) inDoubt = unread.Any("terms");
        if (inDoubt) return WordsAreUk(tree) ? Terms.UK : Terms.US;
        return first is not null && IsUk(first) ? Terms.UK : Terms.US;
    }

    // The line that says the terms can't be read: a word that only one of the two has tells them as well.
    private static bool WordsAreUk(SyntaxTree tree)
    {
        foreach (var token in tree.Tokens)
        {
            if (token.Kind != TokenKind.Word) continue;
            var word = tree.Source.ToString(token.Span);
            if (StitchBook.Find(word, Terms.US) is null && StitchBook.Find(word, Terms.UK) is not null) return true;
        }

        return false;
    }

    private static bool IsUs(TermsStatement statement) => string.Equals(statement.Terms.Text, "US", StringComparison.OrdinalIgnoreCase);

    private static bool IsUk(TermsStatement statement) => string.Equals(statement.Terms.Text, "UK", StringComparison.OrdinalIgnoreCase);
}
