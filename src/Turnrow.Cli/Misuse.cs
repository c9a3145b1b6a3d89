using System.CommandLine;
using System.CommandLine.Parsing;
using Turnrow.Cli.Verbs;

namespace Turnrow.Cli;

/// <summary>What is wrong with a command line, in words, and what to type instead.</summary>
internal static class Misuse
{
    /// <summary>A line that names a verb; null if there is nothing wrong with it.</summary>
    public static string? Of(IReadOnlyList<string> args, ParseResult line, Verb verb)
    {
        var more = $"\n  {verb.Usage}\n  more: turnrow {verb.Name} --help";
        // The parser takes a misspelt option for a file; a file whose name begins so is named after `--`.
        if (!args.Contains("--") && MisspeltOption(line) is { } option)
            return $"{verb.Name} knows no `{option}`{DidYouMean.Clause(option, verb.Options.Select(known => known.Name))}{more}";
        foreach (var word in line.UnmatchedTokens) return $"{verb.Name} has no use for `{word}`{more}";
        foreach (var error in line.Errors)
        {
            // Of an argument that is missing the parser speaks in a programmer's words.
            return error.SymbolResult is ArgumentResult { Tokens.Count: 0, Argument.HelpName: { } wanted }
                ? $"{verb.Name} needs {wanted}{more}"
                : error.Message + more;
        }

        return null;
    }

    /// <summary>A line that names no verb that there is.</summary>
    public static string OfRoot(IReadOnlyList<string> args, IReadOnlyList<Verb> verbs)
    {
        var word = args.FirstOrDefault(arg => arg != "--version", string.Empty);
        var names = verbs.Select(verb => verb.Name).Concat(["--help", "--version"]);
        return $"there is no `turnrow {word}`{DidYouMean.Clause(word, names)}\n  all there is: turnrow --help";
    }

    private static string? MisspeltOption(ParseResult line)
    {
        foreach (var argument in line.CommandResult.Children.OfType<ArgumentResult>())
        {
            foreach (var token in argument.Tokens)
            {
                if (token.Value.Length > 1 && token.Value[0] == '-') return token.Value;
            }
        }

        return line.UnmatchedTokens.FirstOrDefault(token => token.StartsWith('-'));
    }
}
