using Turnrow.Fabric.Patterns;
using Turnrow.Publishing.Trade;

namespace Turnrow.Publishing.Instructions.Sections;

/// <summary>
/// Cautions for what children and babies wear, only where the pattern gives cause. They defer to local rules, which differ.
/// </summary>
internal static class CautionsSection
{
    private static readonly string[] Cords = ["tie", "ties", "cord", "cords", "drawstring", "drawstrings", "string", "strings", "strap", "straps", "ribbon", "ribbons", "lace", "laces"];

    private static readonly string[] SmallParts =
        ["button", "buttons", "bead", "beads", "snap", "snaps", "popper", "poppers", "toggle", "toggles", "eye", "eyes", "bell", "bells", "pompom", "pompoms", "sequin", "sequins"];

    public static IEnumerable<string> Write(Pattern pattern)
    {
        if (pattern.Wearer is not (Wearer.Child or Wearer.Baby)) yield break;
        var who = pattern.Wearer == Wearer.Baby ? "baby" : "child";
        var named = pattern.Pieces.Select(static p => Names.Words(p.Name)).Concat(pattern.Notions).ToList();
        var cautions = new List<string>();
        if (AnyOf(named, Cords))
            cautions.Add($"Cords and ties can catch, and can strangle a {who}. Keep their free ends short, put none at the hood or the neck, and none that ties at the back.");
        if (AnyOf(pattern.Notions, SmallParts))
            cautions.Add($"Small parts can come off and choke a {who}. Fasten them firmly and check them before each wear, or embroider instead.");
        if (cautions.Count == 0) yield break;
        yield return "## Cautions";
        yield return string.Join('\n', cautions.Select(static c => $"- {c}"));
        yield return "The rules of the country where it is worn or sold decide.";
    }

    private static bool AnyOf(IEnumerable<string> texts, string[] words)
    {
        foreach (var text in texts)
        {
            foreach (var word in text.Split([' ', ',', '-', '.', ';', '(', ')'], StringSplitOptions.RemoveEmptyEntries))
            {
                if (words.Contains(word, StringComparer.OrdinalIgnoreCase)) return true;
            }
        }

        return false;
    }
}
