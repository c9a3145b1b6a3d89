namespace Turnrow.Compiler.Tests.Naive.Making;

/// <summary>The turning rules a designer may set, custom first.</summary>
public static class TurnRules
{
    private static readonly Dictionary<string, TurnRule?[]> s_rules = new()
    {
        ["sc"] = [null, new("sc", 1, false), new("sc", 1, true)],
        ["hdc"] = [new("hdc", 2, true), new("hdc", 2, false), new("hdc", 2, true, true), new("hdc", 1, false)],
        ["dc"] = [null, new("dc", 3, true), new("dc", 2, false), new("dc", 2, true), new("dc", 3, true, true), new("dc", 3, true, false, 5)],
        ["tr"] = [null, new("tr", 4, true), new("tr", 3, false), new("tr", 4, true, true)],
    };

    /// <summary>One rule, or none where the custom of the trade is enough.</summary>
    public static IEnumerable<TurnRule> Any(ChoiceTape tape, string stitch) =>
        tape.Of<TurnRule?>(s_rules[stitch]) is { } rule ? [rule] : [];
}
