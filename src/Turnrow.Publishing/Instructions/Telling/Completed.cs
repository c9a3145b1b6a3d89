using Turnrow.Fabric.Stitches;
using Turnrow.Fabric.Words;

namespace Turnrow.Publishing.Instructions.Telling;

/// <summary>Behind the words of a stitch that the row's chain began, written out: here it is complete, and counts as one.</summary>
internal sealed record Completed(Stitch Special) : Word;
