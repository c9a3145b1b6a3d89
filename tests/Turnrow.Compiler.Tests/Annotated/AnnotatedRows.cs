using System.Text;
using Turnrow.Fabric.Patterns;
using Turnrow.Syntax.Text;
using Turnrow.Syntax.Tree;

namespace Turnrow.Compiler.Tests.Annotated;

/// <summary>
/// A pattern with, under each of its lines, what the compiler found there: counts, where a piece begins, rows, seams, and whatever it has
/// to say. One diff then shows cause and effect.
/// </summary>
internal static class AnnotatedRows
{
    public static string Of(string name, string text)
    {
        var source = new SourceText(name, text);
        var compilation = Compilation.Of(source, Repository.Beside);
        var output = new StringBuilder();
        var next = 0;
        var seams = new Queue<SeamInSizes>(compilation.Pattern.Items.OfType<SeamInSizes>());
        for (var number = 1; number <= source.LineCount; number++)
        {
            var span = source.LineSpan(number);
            if (number < source.LineCount || span.Length > 0) output.Append(source.ToString(span)).Append('\n');
            for (; next < compilation.Tree.Lines.Count && EndOf(source, compilation.Tree.Lines[next]) == number; next++)
            {
                foreach (var note in Notes(compilation, compilation.Tree.Lines[next], seams)) output.Append("    ~ ").Append(note).Append('\n');
            }

            foreach (var found in compilation.Diagnostics.Where(d => source.PositionOf(d.Span.Start).Line == number))
                output.Append("    ! ").Append(found.Kind.Name).Append(": ").Append(found.Message).Append('\n');
        }

        return output.ToString();
    }

    private static int EndOf(SourceText source, LineSyntax line) => source.PositionOf(line.Span.End).Line;

    private static IEnumerable<string> Notes(Compilation compilation, LineSyntax line, Queue<SeamInSizes> seams)
    {
        var pattern = compilation.Pattern;
        switch (line.Statement)
        {
            case CountStatement count:
                return pattern.FittedCounts.Where(f => Same(f.Name, count.Name.Text)).Select(FittedNote);
            case PieceStatement opened:
                return pattern.Pieces.Where(p => Same(p.Name, opened.Name.Text)).Select(BeginningNote.Of).Concat(RowNotes.Of(compilation, line));
            case SeamStatement when seams.TryDequeue(out var seam):
                return [SeamNote.Of(seam)];
            default:
                return RowNotes.Of(compilation, line);
        }
    }

    private static bool Same(string a, string b) => string.Equals(a, b, StringComparison.OrdinalIgnoreCase);

    private static string FittedNote(FittedCount fitted) =>
        $"{InSizes.Text(fitted.Counts)} {(fitted.OfRows ? "rows" : "stitches")} of {fitted.Stitch} for {InSizes.Text(fitted.Asked.Select(InSizes.Cm))} cm, measures {InSizes.Text(fitted.Measured.Select(InSizes.Cm))} cm";
}
