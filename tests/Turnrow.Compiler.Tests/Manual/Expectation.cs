using System.Text.RegularExpressions;
using Turnrow.Syntax.Diagnostics;

namespace Turnrow.Compiler.Tests.Manual;

/// <summary>A finding that an example says, at its line's end, that it gives: <c># error: row-count "2 fewer"</c>.</summary>
/// <param name="Line">The line of the example, from 1.</param>
/// <param name="Severity">Error or warning.</param>
/// <param name="Name">The diagnostic's name.</param>
/// <param name="Part">What its message has to hold; empty for anything.</param>
internal sealed partial record Expectation(int Line, Severity Severity, string Name, string Part)
{
    /// <summary>What an example expects.</summary>
    public static IEnumerable<Expectation> Of(ManualBlock block)
    {
        for (var i = 0; i < block.Lines.Count; i++)
        {
            var comment = Comment().Match(block.Lines[i]);
            if (!comment.Success) continue;
            foreach (Match one in One().Matches(comment.Value))
            {
                var severity = one.Groups["severity"].Value == "error" ? Severity.Error : Severity.Warning;
                yield return new Expectation(i + 1, severity, one.Groups["name"].Value, one.Groups["part"].Value);
            }
        }
    }

    /// <summary>The line without what it expects, so that a message shows it as a designer would have it.</summary>
    public static string TakenOut(string line) => Comment().Replace(line, "");

    /// <summary>Whether a finding in that line is this one.</summary>
    public bool IsMetBy(Diagnostic found, int line) =>
        line == Line && found.Kind.Severity == Severity && found.Kind.Name == Name && found.Message.Contains(Part, StringComparison.Ordinal);

    public override string ToString() => $"line {Line}: {Severity} {Name} \"{Part}\"";

    [GeneratedRegex(@" *# (error|warning): .*$")]
    private static partial Regex Comment();

    [GeneratedRegex("""(?<severity>error|warning): (?<name>[a-z-]+)( "(?<part>[^"]*)")?""")]
    private static partial Regex One();
}
