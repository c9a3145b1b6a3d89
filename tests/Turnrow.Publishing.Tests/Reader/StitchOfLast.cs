using System.Text.RegularExpressions;

namespace Turnrow.Publishing.Tests.Reader;

/// <summary>A stitch of an earlier piece's last row, by its number.</summary>
/// <param name="RightSide">True if the right side faces.</param>
/// <param name="Piece">The piece's title.</param>
/// <param name="Nth">Its number …</param>
/// <param name="FromRight">… from the right edge, or from where a round began; else from the left, or back from there.</param>
/// <param name="OfRound">True if that row is called a round.</param>
/// <param name="Bridged">True if chains of a bridge are said to be counted.</param>
internal sealed record StitchOfLast(bool RightSide, string Piece, int Nth, bool FromRight, bool OfRound, bool Bridged)
{
    /// <summary>`with RS of Back facing … in the 9th st of its last row, counted from its left edge`, in named groups.</summary>
    public static StitchOfLast Of(Match match)
    {
        var ofRound = match.Groups["round"].Success;
        var fromRight = ofRound ? !match.Groups["back"].Success : match.Groups["edge"].Value == "right";
        var nth = match.Groups["rim"].Success || match.Groups["n"].Value == "first" ? 1 : Number.Of(match.Groups["n"].Value);
        return new(match.Groups["side"].Value == "RS", match.Groups["piece"].Value, nth, fromRight, ofRound, match.Groups["bridged"].Success);
    }
}
