using System.Text.RegularExpressions;

namespace Turnrow.Publishing.Tests.Reader;

/// <summary>`(2 increases at neck edge)`: behind the first steps of a row it is where the row starts, behind the last where it ends.</summary>
internal static partial class Shaping
{
    public static (int Right, int Left)? Of(IReadOnlyList<Step> steps, bool rightSide)
    {
        var across = steps.ToList().FindIndex(step => step is WorkInto { Places.Where: Where.Across or Where.ToLast or Where.ToNext });
        var (start, end) = (0, 0);
        for (var i = 0; i < steps.Count; i++)
        {
            foreach (var remark in steps[i].Remarks)
            {
                if (Remark().Match(remark) is not { Success: true } match) continue;
                if (across < 0) return null;
                var number = match.Groups["n"].Success ? Number.Of(match.Groups["n"].Value) : 1;
                var change = match.Groups["way"].Value == "increase" ? number : -number;
                if (i < across) start += change;
                else end += change;
            }
        }

        return rightSide ? (start, end) : (end, start);
    }

    /// <summary>How many increases a remark speaks of.</summary>
    public static int Increases(string remark) =>
        Remark().Match(remark) is not { Success: true } match || match.Groups["way"].Value != "increase" ? 0
        : match.Groups["n"].Success ? Number.Of(match.Groups["n"].Value) : 1;

    [GeneratedRegex(@"^(?:(?<n>\d+) )?(?<way>increase|decrease)s?(?: at .+)?$")]
    private static partial Regex Remark();
}
