using Turnrow.Fabric.Pieces;
using Turnrow.Fabric.Rows;
using Turnrow.Syntax.Diagnostics;
using Xunit;

namespace Turnrow.Compiler.Tests.Facts;

/// <summary>What was published, as a designer would type it: small patterns in US terms, of one piece, <c>back</c>.</summary>
internal static class Printed
{
    /// <summary>Lines at the top of a file, and no piece.</summary>
    public static Compiled Top(string lines) => Compiled.Whole("terms US\n" + lines);

    /// <summary>A piece; what comes before it may be empty.</summary>
    public static Compiled Piece(string top, string lines) => Top($"{top}\npiece back\n{lines}");

    /// <summary>A piece that begins with so many stitches and a row of dc.</summary>
    public static Compiled Over(string stitches, string lines) => Piece("sizes S, M, L, XL", $"begin with {stitches} stitches\nrow 1 RS: dc across\n{lines}");

    /// <summary>The chain and the first chain worked into.</summary>
    public static (int Chains, int FirstStitchIn) Foundation(Compiled compiled)
    {
        Assert.IsType<FoundationStart>(compiled.Clean().Piece("back", 0).Start);
        return (compiled.Row(1).Work!.Opening.Chains, compiled.Row(1).Work!.Opening.FirstStitchIn);
    }

    /// <summary>The one thing that the compiler has against a pattern, held to its name.</summary>
    public static Diagnostic Fault(Compiled compiled, string name)
    {
        var found = Assert.Single(compiled.Compilation.Diagnostics);
        Assert.Equal(name, found.Kind.Name);
        return found;
    }

    /// <summary>Holds the one thing that the compiler has against a pattern to its name and its arithmetic.</summary>
    public static void Objects(Compiled compiled, string name, string arithmetic)
    {
        var found = Fault(compiled, name);
        Assert.Contains(arithmetic, string.Join('\n', found.Ledger.Prepend(found.Message)), StringComparison.Ordinal);
    }

    /// <summary>How a row is turned.</summary>
    public static Opening Turn(Compiled compiled, int row) => compiled.Clean().Row(row).Work!.Opening;
}
