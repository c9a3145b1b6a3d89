using Turnrow.Fabric.Joins;
using Turnrow.Fabric.Patterns;
using Turnrow.Fabric.Pieces;
using Turnrow.Fabric.Places;
using Turnrow.Fabric.Rows;
using Turnrow.Syntax.Text;
using Xunit;

namespace Turnrow.Compiler.Tests;

/// <summary>A pattern that was compiled, with what tests ask of it.</summary>
internal sealed class Compiled
{
    /// <summary>A header in two sizes: 20 stitches and 10 rows of dc, 20 and 20 of sc, to 10 cm.</summary>
    public const string Header = """
        terms US
        sizes S, L
        gauge dc: 20 stitches and 10 rows to 10 cm
        gauge sc: 20 stitches and 20 rows to 10 cm
        turn dc: ch 3 counts

        """;

    private Compiled(string text) => Compilation = Compilation.Of(new SourceText("test.turnrow", text), Repository.Beside);

    public Compilation Compilation { get; }

    public Pattern Pattern => Compilation.Pattern;

    /// <summary>The names of all that was found, in order.</summary>
    public IEnumerable<string> Found => Compilation.Diagnostics.Select(d => d.Kind.Name);

    public static Compiled Whole(string text) => new(text);

    /// <summary>Lines behind the header in two sizes.</summary>
    public static Compiled Of(string lines) => new(Header + lines);

    /// <summary>Lines of one piece that begins with 20 stitches and a row of dc.</summary>
    public static Compiled Piece(string lines) => Of("piece back\nbegin with 20 stitches\nrow 1 RS: dc across\n" + lines);

    /// <summary>Holds the pattern to having nothing wrong.</summary>
    public Compiled Clean()
    {
        Assert.Empty(Compilation.Diagnostics.Select(d => $"{d.Kind.Name}: {d.Message}"));
        return this;
    }

    public IReadOnlyList<Piece> InSizes(string piece) => Pattern.Pieces.Single(p => p.Name == piece).InSizes;

    public Piece Piece(string name, int size) => InSizes(name)[size];

    /// <summary>Stitches of each row of a piece in one size.</summary>
    public IEnumerable<int> Counts(string piece = "back", int size = 0) => Piece(piece, size).Rows.Select(r => r.Work?.Stitches ?? -1);

    /// <summary>Stitches of the last row, as <c>19 (20, 22)</c>.</summary>
    public string Last(string piece = "back") => Annotated.InSizes.Text(InSizes(piece).Select(p => p.Rows[^1].Work?.Stitches ?? -1));

    public string Rows(string piece = "back") => Annotated.InSizes.Text(InSizes(piece).Select(p => p.Rows.Count));

    public Row Row(int number, string piece = "back", int size = 0) => Piece(piece, size).Rows[number - 1];

    /// <summary>Spaces of the last row.</summary>
    public int Spaces(string piece = "back") => Piece(piece, 0).Rows[^1].Work!.Tops.CountWhere(static p => p.Kind == PlaceKind.Space);

    /// <summary>Rows in which the count changes, in one size.</summary>
    public IEnumerable<int> Changes(string piece = "back", int size = 0)
    {
        var counts = Counts(piece, size).ToList();
        return Enumerable.Range(1, counts.Count - 1).Where(i => counts[i] != counts[i - 1]).Select(i => i + 1);
    }

    public Seam Seam(int index, int size = 0) => Pattern.Items.OfType<SeamInSizes>().ElementAt(index).InSizes[size]!;
}
