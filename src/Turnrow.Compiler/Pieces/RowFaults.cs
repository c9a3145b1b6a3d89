using Turnrow.Compiler.Diagnostics.Kinds;
using Turnrow.Compiler.Rows;
using Turnrow.Fabric.Rows;
using Turnrow.Fabric.Words;
using Turnrow.Syntax.Diagnostics;
using Turnrow.Syntax.Text;
using Turnrow.Syntax.Tree;

namespace Turnrow.Compiler.Pieces;

/// <summary>Makes the diagnostic of a row that can't be worked.</summary>
internal static class RowFaults
{
    /// <summary>Reports a fault that several sizes share.</summary>
    public static void Report(Context context, PieceState piece, StatementSyntax statement, int[] sizes, Func<int, RowFailure> failureOf)
    {
        var first = failureOf(sizes[0]);
        if (first.Plan is WordsPlan { Of: { } of })
        {
            // The words stand where the stitch pattern is defined, perhaps in another file.
            context.Findings.Add(PatternHere.At(context, statement.Span, piece, of, sizes, failureOf));
            return;
        }

        var span = (first.Fault.Word?.Origin.Value as SyntaxNode)?.Span ?? RowSpan(statement);
        var text = new WordText(context);
        var word = first.Fault.Word is { } w ? text.Of(w) : string.Empty;
        var ledger = Ledger(context, piece, first, sizes[0]);
        var found = first.Fault.Kind switch
        {
            RowFaultKind.NotEnough when first is { Plan: ShapedPlan, Fault.Word.Origin.Value: null } => RowLength.TooFewToShape(context, span, piece, sizes, failureOf),
            RowFaultKind.NotEnough or RowFaultKind.LeftOver => RowLength.At(context, span, piece, sizes, failureOf, word, ledger),
            RowFaultKind.RepeatDoesNotComeOut => RepeatRemainder.At(context, span, sizes, failureOf, word, ledger, RestInWords(context, sizes, failureOf)),
            RowFaultKind.RepeatTakesNothing => RepeatEndless.At(span, piece, sizes[0], word),
            RowFaultKind.SpaceAhead => SpaceAhead.At(context, span, sizes, word, first.Fault.Needed, PlainAcross(first.Fault.Word)),
            RowFaultKind.SpaceWithoutLoops => SpaceWithoutLoops.At(context, span, sizes, word, first.Fault),
            RowFaultKind.NoneOfKind when first.Fault.There > 0 => NoSuchPlace.Behind(context, span, sizes, word, text.PlaceOf(first.Fault.Word!), first.Fault.There),
            RowFaultKind.NoneOfKind => NoSuchPlace.At(context, span, sizes, word, text.PlaceOf(first.Fault.Word!)),
            RowFaultKind.SpreadTooMany => SpreadTooMany.At(context, span, sizes, failureOf, word),
            RowFaultKind.MarkNothing => MarkWithoutStitch.At(context, span, sizes),
            RowFaultKind.StandsOnNothing => StandsOnNothing.At(context, span, sizes, word),
            RowFaultKind.ChainsMeet => ChainsMeet.At(context, span, sizes, word),
            RowFaultKind.NoCorner => CornerMissing.At(context, span, piece, sizes, word, first.Below is { HasCorners: true }),
            RowFaultKind.CornerNotNext or RowFaultKind.CornerTooNear => CornerDistance.At(context, span, sizes, word, first.Fault),
            RowFaultKind.NoTurn => TurnMissing.At(context, span, sizes, word, first),
            RowFaultKind.CornerWithoutMiddle => CornerMiddle.At(context, span, sizes, word, CornerMiddle.StitchOf(context, first.Fault.Word!)),
            RowFaultKind.CornerPassed or RowFaultKind.CornerTogether => CornerLost.At(context, span, sizes, first.Fault.Kind, word),
            RowFaultKind.CornerAgain => CornerAgain.At(context, span, sizes, word),
            RowFaultKind.NoRing or RowFaultKind.RingAhead => RingPlace.At(context, span, sizes, first.Fault.Kind, word),
            RowFaultKind.MarkerMoved => MarkerMoved.At(context, span, sizes, first.Fault),
            RowFaultKind.StepInRound => StepInRound.At(context, span, sizes),
            RowFaultKind.RoundAtTurn => RoundAtTurn.At(context, span, sizes, first.Fault.There),
            RowFaultKind.TurnInFirstRow or RowFaultKind.EdgeNotReached => ShortRowEdge.At(context, span, sizes, first.Fault.Kind, first.Row, first.Start, first.StartsAtTurn),
            RowFaultKind.BeginsGoingBack => RowBeginsCrossed.At(context, span, sizes, word, first.Fault, statement is RowStatement { IsRound: true }),
            RowFaultKind.TwoDirections => WorkedBack.Mixed(context, span, sizes, word),
            RowFaultKind.NothingToGoBackOver => WorkedBack.First(context, span, sizes, word, statement is RowStatement { IsRound: true } && first.Row > 1),
            RowFaultKind.TooFarDown => SpikeTooDeep.At(context, span, sizes, word, first.Fault.Needed, first.Fault.There),
            RowFaultKind.JoinBeyond => JoinBeyond.At(context, span, piece, sizes, failureOf),
            RowFaultKind.JoinElsewhere or RowFaultKind.JoinInside or RowFaultKind.JoinOtherEnd => JoinPlace.At(context, span, piece, sizes, first),
            RowFaultKind.TooLong => RowTooLong.At(span),
            _ => PlaceInRow.At(context, span, sizes, first.Fault.Kind, word, first.Fault.There),
        };
        context.Findings.Add(Repeated(piece, first, sizes[0]) is { } again ? found with { Related = [.. found.Related, again] } : found);
    }

    // What a repeat works stands in another line.
    private static Related? Repeated(PieceState piece, RowFailure failure, int size) =>
        failure.Again is { } again && piece.Builders[size].Rows[again - 1].Origin.Value is SyntaxNode line
            ? new Related(line.Span, $"{RowName.Of(piece, size, again)}, which is worked again as {RowName.Of(piece, size, failure.Row)}")
            : null;

    private static StitchItem? PlainAcross(Word? word) =>
        word?.Origin.Value is StitchItem { Before: null, Change: null, Place: null, Amount: AcrossAmount } item ? item : null;

    // What is left over worked plainly behind the repeat: where it is as much in every size.
    private static Mend? RestInWords(Context context, int[] sizes, Func<int, RowFailure> failureOf)
    {
        var fault = failureOf(sizes[0]).Fault;
        if (sizes.Length < context.Sizes || Array.Exists(sizes, i => failureOf(i).Fault.There != fault.There)) return null;
        var across = fault.Word?.Origin.Value switch
        {
            GroupItem { Times: AcrossAmount amount } => amount,
            StitchItem { Amount: AcrossAmount amount } => amount,
            _ => null,
        };
        var stitch = fault.Word switch
        {
            Work work => work.Stitch,
            Repeat { Words: [.., Work { Target.Aim: Aim.Next } work] } => work.Stitch,
            _ => null,
        };
        if (across is null || stitch is null) return null;
        var rest = Counted.Plain(fault.There);
        return new Mend($"work the last {rest} plainly", across.Span, $"until {rest} {(fault.There == 1 ? "remains" : "remain")}, {context.Word(stitch)} {rest}");
    }

    /// <summary>The words of a row; of another statement, all of it.</summary>
    public static TextSpan RowSpan(StatementSyntax statement) =>
        statement is RowStatement { Items: [var a, .., var b] } ? a.Span.To(b.Span)
        : statement is RowStatement { Items: [var only] } ? only.Span
        : statement.Span;

    private static IReadOnlyList<string> Ledger(Context context, PieceState piece, RowFailure failure, int size)
    {
        var worked = RowLedgerWords(failure);
        return worked.Count == 0 ? [] : new RowLedger(context).Of(piece, worked, failure.Row, failure.Places, size);
    }

    private static IReadOnlyList<Word> RowLedgerWords(RowFailure failure)
    {
        if (failure.UpToFault is { } worked) return worked;
        var words = failure.Plan.WordsFrom(failure.Start);
        if (failure.Below is { } below) return RowWorker.Work(words, below).Words;
        return RowWorker.Work(words, Turnrow.Fabric.Places.PlaceSequence.Of(
            Turnrow.Fabric.Places.Place.TopOf(Turnrow.Fabric.Stitches.StitchBook.Single), failure.Places)).Words;
    }
}
