using nietras.SeparatedValues;
using Turnrow.Compiler.Diagnostics.Kinds;
using Turnrow.Compiler.Values;
using Turnrow.Fabric.Bodies;
using Turnrow.Syntax.Tree;

namespace Turnrow.Compiler.Grading;

/// <summary>Finds the table that a <c>body</c> line names, and defines its measures in the pattern's sizes.</summary>
internal sealed class BodyBinder(Context context)
{
    private const int MostLines = 1_000;

    public BodyTable? Bind(BodyStatement statement)
    {
        if (TableOf(statement) is not { } table) return null;
        var places = context.Findings.SizeNames.Select(table.IndexOf).ToArray();
        var missing = Sized.Where(places.Length, i => places[i] < 0);
        if (missing.Length > 0 && !context.SizesInDoubt) context.Findings.Add(BodySize.At(context.Findings, statement.Span, missing, table));
        foreach (var row in table.Rows) Define(statement, row, row.Source ?? table.Source, places);
        return table;
    }

    private void Define(BodyStatement statement, BodyRow row, string source, int[] places)
    {
        if (context.TryStitch(row.Name) is not null) return;
        var values = places.Select(p => p >= 0 && row.Upper[p] is { } length ? new Value(length, true) : (Value?)null);
        context.Scope.Define(new Definition(row.Name, values, statement.Span) { Source = source });
    }

    private BodyTable? TableOf(BodyStatement statement)
    {
        if (statement.File is { } file) return FromFile(file);
        var inInches = statement.Unit!.Unit == LengthUnit.Inch;
        if (!inInches && statement.Unit.Unit != LengthUnit.Centimetre)
        {
            context.Findings.Add(BodyTableUnknown.Unit(statement.Unit.Span));
            inInches = context.InInches;
        }

        if (BodyTables.Find(statement.Table!.Text, inInches) is { } table) return table;
        context.Findings.Add(BodyTableUnknown.At(statement.Table.Span, statement.Table.Text));
        context.Scope.InDoubt = true;
        return null;
    }

    private BodyTable? FromFile(QuotedSyntax file)
    {
        context.Scope.InDoubt = true;
        if (context.Beside(file.Text) is not { } text)
        {
            context.Findings.Add(BodyFile.Missing(file.Span, file.Text));
            return null;
        }

        var (table, fault) = BodyTableReader.Read(Cells(text));
        if (fault is not null) context.Findings.Add(BodyFile.At(file.Span, file.Text, fault));
        if (table is null) return null;
        context.Scope.InDoubt = false;
        return table;
    }

    private static List<IReadOnlyList<string>> Cells(string text)
    {
        using var reader = Sep.Reader(o => o with { HasHeader = false, DisableColCountCheck = true, Unescape = true }).FromText(text.TrimStart('\uFEFF'));
        var lines = new List<IReadOnlyList<string>>();
        foreach (var row in reader)
        {
            var cells = new List<string>(row.ColCount);
            for (var i = 0; i < row.ColCount; i++) cells.Add(row[i].ToString().Trim());
            lines.Add(cells);
            if (lines.Count == MostLines) break;
        }

        return lines;
    }
}
