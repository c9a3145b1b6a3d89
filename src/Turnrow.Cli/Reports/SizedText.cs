using System.Text;

namespace Turnrow.Cli.Reports;

/// <summary>Writes what differs by size as the trade does.</summary>
internal static class SizedText
{
    /// <summary><c>77 (85, 95)</c>, or one word if all sizes have the same.</summary>
    public static string Of(IReadOnlyList<string> inSizes)
    {
        if (inSizes.Count == 0) return string.Empty;
        var same = true;
        for (var i = 1; i < inSizes.Count && same; i++) same = inSizes[i] == inSizes[0];
        if (same) return inSizes[0];
        var text = new StringBuilder(inSizes[0]).Append(" (");
        for (var i = 1; i < inSizes.Count; i++) text.Append(i == 1 ? "" : ", ").Append(inSizes[i]);
        return text.Append(')').ToString();
    }
}
