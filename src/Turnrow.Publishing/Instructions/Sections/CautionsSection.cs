using System.Globalization;
using System.Text;
using Turnrow.Fabric.Patterns;
using Turnrow.Publishing.Trade;

namespace Turnrow.Publishing.Instructions.Sections;

/// <summary>
/// Cautions for what children and babies wear, only where the pattern gives cause. They stand behind the materials: who reads them there has
/// not sewn the buttons on yet.
/// </summary>
internal static class CautionsSection
{
    public static IEnumerable<string> Write(Pattern pattern)
    {
        var who = pattern.Wearer == Wearer.Baby ? "baby" : "child";
        var lines = new StringBuilder();
        foreach (var caution in Cautions.All)
        {
            if (!caution.Concerns(pattern)) continue;
            if (lines.Length > 0) lines.Append('\n');
            lines.Append("- ").Append(string.Format(CultureInfo.InvariantCulture, caution.Text, who)).Append(" (").Append(char.ToUpperInvariant(caution.Source[0])).Append(caution.Source.AsSpan(1)).Append(".)");
        }

        if (lines.Length == 0) yield break;
        yield return "## Cautions";
        yield return lines.ToString();
        yield return "These are the usual cautions. Local rules decide what is allowed where it is worn or sold; ask a safety professional before you sell it or give it away.";
    }
}
