using System.Text;
using Turnrow.Syntax.Text;
using Turnrow.Syntax.Tree;

namespace Turnrow.Compiler.Tests.Mutations;

/// <summary>What came of a slip.</summary>
/// <param name="Slip">The slip.</param>
/// <param name="Found">True if the compiler says anything, in any size.</param>
/// <param name="Difference">What differs in the thing made; nothing is asked if it was found.</param>
internal sealed record Judged(Slip Slip, bool Found, Difference Difference)
{
    private bool? _foundIfClaimed;

    public string Kind => Slip.Kind;

    public StatementSyntax Statement => Slip.Statement;

    /// <summary>True if it is found once <c>turnrow claim</c> has written the counts of the pattern as it should be into the file.</summary>
    public bool FoundIfClaimed => _foundIfClaimed ??= Compilation.Of(new SourceText(Slip.Pattern.Path, Claimed()), Repository.Beside).Diagnostics.Count > 0;

    public static Judged Of(Slip slip)
    {
        var after = Compilation.Of(new SourceText(slip.Pattern.Path, slip.Edit.Text), Repository.Beside);
        return after.Diagnostics.Count > 0
            ? new Judged(slip, true, Difference.Nothing)
            : new Judged(slip, false, Differences.Between(slip.Pattern.Compilation.Pattern, after.Pattern));
    }

    /// <summary>True if nothing else differs.</summary>
    public bool Only(Difference differences) => Difference != Difference.Nothing && (Difference & ~differences) == Difference.Nothing;

    public bool Has(Difference difference) => (Difference & difference) != Difference.Nothing;

    /// <summary>True if the slip is within a node of a kind.</summary>
    public bool Within<T>()
        where T : SyntaxNode =>
        Slip.Pattern.NodesOf(Slip.Index).Any(n => n.Node is T && n.Node.Span.Start <= Slip.Edit.Span.Start && Slip.Edit.Span.End <= n.Node.Span.End);

    // The claims go where they stand without the slip; those of a line that is gone are gone with it.
    private string Claimed()
    {
        var (edit, claims) = (Slip.Edit, Slip.Pattern.Compilation.MissingClaims);
        var text = new StringBuilder(edit.Text);
        foreach (var claim in claims.OrderByDescending(c => c.Position))
        {
            if (claim.Position >= edit.Span.End) text.Insert(claim.Position + edit.Shift, claim.Text);
            else if (claim.Position <= edit.Span.Start) text.Insert(claim.Position, claim.Text);
        }

        return text.ToString();
    }
}
