using System.Text;
using Turnrow.Compiler;

namespace Turnrow.Cli.Verbs;

/// <summary>Puts claims into a text.</summary>
internal static class ClaimText
{
    /// <summary>The text with all claims inserted and every character of its own kept, line ends and byte order mark included.</summary>
    public static string Insert(string text, IReadOnlyList<MissingClaim> claims)
    {
        var result = new StringBuilder(text.Length + (claims.Count * 16));
        var done = 0;
        foreach (var claim in claims.OrderBy(claim => claim.Position))
        {
            result.Append(text, done, claim.Position - done).Append(claim.Text);
            done = claim.Position;
        }

        return result.Append(text, done, text.Length - done).ToString();
    }
}
