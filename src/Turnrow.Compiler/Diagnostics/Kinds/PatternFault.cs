using Turnrow.Compiler.Rows;
using Turnrow.Fabric.Words;
using static System.FormattableString;

namespace Turnrow.Compiler.Diagnostics.Kinds;

/// <summary>Why a row of a stitch pattern can't be worked, in the middle of a sentence: its own words may stand in another file.</summary>
internal static class PatternFault
{
    public static string Reason(Context context, RowFault fault, int there)
    {
        var word = fault.Word is { } w ? $"`{new WordText(context).Of(w)}`" : "it";
        return fault.Kind switch
        {
            RowFaultKind.NotEnough => Invariant($"{word} needs {Counted.Places(fault.Needed)} and {fault.There} of {there} are left"),
            RowFaultKind.LeftOver => Invariant($"{Counted.Places(fault.There)} of {there} are left over at its end"),
            RowFaultKind.RepeatDoesNotComeOut => Invariant($"{word} does not come out over {Counted.Places(there)}, {fault.There} are left over"),
            RowFaultKind.SpaceAhead => $"{word} meets a space, and does not say that it goes into one",
            RowFaultKind.NoneOfKind => $"{word} finds no such place ahead",
            RowFaultKind.TooFarDown => $"{word} goes further down than the rows of the pattern",
            RowFaultKind.NotLast => $"{word} is not at the last place",
            RowFaultKind.NotFirst => $"{word} is not at the first place",
            _ => $"{word} can't be worked",
        };
    }
}
