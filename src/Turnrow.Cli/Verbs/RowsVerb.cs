using System.CommandLine;
using Turnrow.Cli.Files;
using Turnrow.Cli.Reports;
using Turnrow.Fabric.Patterns;
using Turnrow.Publishing.Tables;

namespace Turnrow.Cli.Verbs;

/// <summary><c>turnrow rows</c>: every row with its counts.</summary>
internal sealed class RowsVerb : Verb
{
    private readonly Argument<string> _path = new("FILE") { HelpName = "a FILE", Description = "a pattern" };
    private readonly Option<string?> _piece = new("--piece") { HelpName = "P", Description = "this piece only" };
    private readonly Option<string?> _size = new("--size") { HelpName = "S", Description = "this size only" };
    private readonly Option<bool> _json = new("--json") { Description = "the rows as JSON, for other programs" };

    public RowsVerb() : base("rows", "list every row: its side, its counts in all sizes, where it starts and ends")
    {
        Arguments.Add(_path);
        Options.Add(_piece);
        Options.Add(_size);
        Options.Add(_json);
    }

    /// <inheritdoc/>
    public override string Usage => "turnrow rows FILE [--piece P] [--size S] [--json]";

    /// <inheritdoc/>
    public override string About => """
        Lists the rows of each piece as they will be worked: number, side, stitches in all sizes, the
        edge where the row starts and the one where it ends, and the line of the file that makes it.
        `-` stands for a row that a size does not reach, `?` for a count that an error leaves unknown.
        """;

    /// <inheritdoc/>
    public override string Example => "turnrow rows fenland-wrap-waistcoat.turnrow --piece right-front --size M";

    /// <inheritdoc/>
    public override int Run(ParseResult line, Terminal terminal) =>
        InputFiles.One(line.GetValue(_path) ?? "", terminal, file =>
        {
            var pattern = file.Compilation.Pattern;
            var code = Findings.Write(terminal.Error, file, terminal.ColourError);
            if (!Choice.TrySize(pattern, line.GetValue(_size), out var size, out var fault)
                || !Choice.TryPieces(pattern, line.GetValue(_piece), out var pieces, out fault))
                return terminal.Refuse($"{file.Path} {fault}");
            if (line.GetValue(_json)) WriteJson(terminal, file, pieces, size);
            else WriteTables(terminal, file, pieces, size);
            return code;
        });

    private static void WriteJson(Terminal terminal, PatternFile file, IReadOnlyList<PieceInSizes> pieces, int? only)
    {
        using var records = new JsonRecords(terminal);
        foreach (var piece in pieces)
        {
            for (var size = 0; size < piece.InSizes.Count; size++)
            {
                if (only is not null && only != size) continue;
                foreach (var record in RowTable.Of(file.Compilation.Pattern, piece.InSizes[size], NameOf(file, size), file.Compilation.LineOf))
                    records.Add(json => RowsJson.Write(json, record));
            }
        }

        records.End();
    }

    private static void WriteTables(Terminal terminal, PatternFile file, IReadOnlyList<PieceInSizes> pieces, int? only)
    {
        var between = "";
        foreach (var piece in pieces)
        {
            if (piece.InSizes.Count == 0) continue;
            terminal.Out.Write(between);
            if (only is { } size) RowListing.Write(terminal.Out, file.Compilation.LineOf, [piece.InSizes[size]], [NameOf(file, size)]);
            else RowListing.Write(terminal.Out, file.Compilation.LineOf, piece.InSizes, [.. piece.InSizes.Select((_, i) => NameOf(file, i))]);
            between = "\n";
        }
    }

    private static string NameOf(PatternFile file, int size) =>
        size < file.Compilation.Pattern.Sizes.Count ? file.Compilation.Pattern.Sizes[size] : string.Empty;
}
