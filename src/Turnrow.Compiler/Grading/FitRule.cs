using Turnrow.Fabric.Numbers;
using Turnrow.Syntax.Diagnostics;

namespace Turnrow.Compiler.Grading;

/// <summary>How a finished measure fits a body: by how much the one may be less or more than the other, and who says so.</summary>
/// <param name="Measure">The finished measure's name.</param>
/// <param name="Body">The body's measure that it is held against.</param>
/// <param name="Kind">What is told when it does not fit.</param>
/// <param name="Least">Least difference in centimetres.</param>
/// <param name="Most">Greatest difference in centimetres; null for any.</param>
/// <param name="Says">The rule in words, with its numbers in both units.</param>
/// <param name="Source">Who says so.</param>
/// <param name="Less">What a smaller garment is: narrower, and what comes of it.</param>
/// <param name="More">What a larger garment is, and what comes of it.</param>
/// <param name="Mend">What to do.</param>
internal sealed record FitRule(
    string Measure, string Body, DiagnosticKind Kind, Rational Least, Rational? Most, string Says, string Source, FitFault Less, FitFault More, string Mend)
{
    /// <summary>True if the garment there has to go over the body's measure to be put on, so that nothing is wrong where it opens.</summary>
    public bool Passes { get; init; }
}

/// <summary>A garment that is off on one side.</summary>
/// <param name="Word">How it is beside the body: <c>shallower</c>.</param>
/// <param name="Trouble">What the wearer has of it.</param>
internal readonly record struct FitFault(string Word, string Trouble);
