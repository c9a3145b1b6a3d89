using System.CommandLine;
using System.Text;
using Turnrow.Cli.Files;
using Turnrow.Cli.Reports;
using Turnrow.Compiler;

namespace Turnrow.Cli.Verbs;

/// <summary><c>turnrow claim</c>: writes down the counts that are not claimed yet.</summary>
internal sealed class ClaimVerb : Verb
{
    private static readonly UTF8Encoding Utf8 = new(encoderShouldEmitUTF8Identifier: false);
    private readonly Argument<string> _path = new("FILE") { HelpName = "a FILE", Description = "a pattern" };

    public ClaimVerb() : base("claim", "write the calculated stitch counts into a pattern, where it claims none")
    {
        Arguments.Add(_path);
    }

    /// <inheritdoc/>
    public override string Usage => "turnrow claim FILE";

    /// <inheritdoc/>
    public override string About => """
        Ends each line that makes rows and says no count with the count it makes, in all sizes, so that
        a later change that moves a count shows. A claim that is there is never changed, and neither is
        anything else in the file.
        """;

    /// <inheritdoc/>
    public override string Example => "turnrow claim fenland-wrap-waistcoat.turnrow";

    /// <inheritdoc/>
    public override int Run(ParseResult line, Terminal terminal) =>
        InputFiles.One(line.GetValue(_path) ?? "", terminal, file => Claim(terminal, file));

    private static int Claim(Terminal terminal, PatternFile file)
    {
        var code = Findings.Write(terminal.Error, file, terminal.ColourError);
        var source = file.Compilation.Tree.Source;
        if (!Utf8.GetBytes(source.Text).AsSpan().SequenceEqual(file.Bytes))
        {
            terminal.Out.WriteLine($"{file.Path}: left as it is, since not all of it can be read as UTF-8 text");
            return ExitCode.Errors;
        }

        var claims = file.Compilation.MissingClaims;
        if (claims.Count > 0)
        {
            try
            {
                WholeFile.Rewrite(file.Path, Utf8.GetBytes(ClaimText.Insert(source.Text, claims)));
            }
            catch (Exception fault) when (FileFault.Is(fault))
            {
                return terminal.Refuse($"{file.Path} can't be written: {FileFault.Reason(fault)}");
            }
        }

        Report(terminal.Out, file, claims);
        return code;
    }

    private static void Report(TextWriter writer, PatternFile file, IReadOnlyList<MissingClaim> claims)
    {
        var source = file.Compilation.Tree.Source;
        foreach (var claim in claims) writer.WriteLine($"  line {source.PositionOf(claim.Position).Line}: {claim.Text.Trim()}");
        var unknown = UnknownLines(file.Compilation);
        writer.WriteLine(claims.Count == 0 && unknown.Count == 0
            ? $"{file.Path}: nothing to add, every count is claimed"
            : $"{file.Path}: {Summary.Many(claims.Count, "claim")} added");
        if (unknown.Count > 0)
            writer.WriteLine($"  counts that an error hides: line{(unknown.Count == 1 ? "" : "s")} {string.Join(", ", unknown)}");
    }

    private static SortedSet<int> UnknownLines(Compilation compilation)
    {
        var lines = new SortedSet<int>();
        foreach (var piece in compilation.Pattern.Pieces)
        {
            foreach (var inSize in piece.InSizes)
            {
                foreach (var row in inSize.Rows)
                {
                    if (row.Work is null) lines.Add(compilation.LineOf(row));
                }
            }
        }

        return lines;
    }
}
