using Turnrow.Compiler.Diagnostics.Kinds;
using Turnrow.Compiler.Grading;
using Turnrow.Compiler.Stitches;
using Turnrow.Compiler.StitchPatterns;
using Turnrow.Compiler.Values;
using Turnrow.Fabric.Bodies;
using Turnrow.Fabric.Numbers;
using Turnrow.Fabric.Patterns;
using Turnrow.Fabric.Rows;
using Turnrow.Fabric.Stitches;
using Turnrow.Syntax.Text;
using Turnrow.Syntax.Tree;

namespace Turnrow.Compiler.Header;

/// <summary>Reads the lines that hold for the whole file: title, yarn, gauge, turning chains, measures and counts.</summary>
internal sealed class HeaderBinder(Context context, DefinitionBinder definitions)
{
    private readonly Dictionary<Type, StatementSyntax> _once = [];
    private readonly List<Gauge> _gauges = [];
    private readonly Dictionary<Stitch, TextSpan> _gaugeSpans = [];
    private readonly List<Yarn> _yarns = [];
    private readonly Dictionary<string, TextSpan> _yarnNames = new(StringComparer.OrdinalIgnoreCase);
    private readonly List<string> _notions = [];
    private readonly List<Measure> _measures = [];
    private readonly List<FittedCount> _fitted = [];
    private readonly List<NamedCount> _counts = [];
    private bool _wearerSaid;

    /// <summary>The pattern's header; <paramref name="sizes"/> and terms were found before.</summary>
    public Pattern Bind(IEnumerable<StatementSyntax> statements, IReadOnlyList<string> sizes)
    {
        var pattern = new Pattern { Sizes = sizes, Terms = context.Terms };
        var lines = statements.ToList();
        _wearerSaid = lines.Exists(static line => line is WearerStatement);
        foreach (var yarn in lines.OfType<YarnStatement>()) context.Yarns.Add(yarn.Name);
        foreach (var body in lines.OfType<BodyStatement>()) pattern = Bodies(pattern, body);
        var stitches = new StitchDefinition(context, new StitchLines(lines));
        foreach (var statement in lines)
        {
            if (statement is StitchStatement stitch) stitches.Define(stitch);
            else pattern = One(pattern, statement);
        }

        return pattern with
        {
            Yarns = _yarns,
            MostFloat = context.Yarns.MostFloat,
            Swatches = SwatchesOf(lines),
            Notions = _notions,
            Gauges = context.Gauges,
            Measures = _measures,
            FittedCounts = _fitted,
            Counts = _counts,
            TurnRules = [.. context.Rules],
            Counting = context.Counting,
        };
    }

    private Pattern One(Pattern pattern, StatementSyntax statement)
    {
        switch (statement)
        {
            case NotationStatement notation:
                if (Once(notation) && (notation.Number.Numerator != 1 || notation.Number.Denominator != 1)) context.Findings.Add(NotationVersion.At(notation.Number.Span));
                return pattern;
            case PatternStatement title:
                return Once(title) ? pattern with { Title = title.Title.Text } : pattern;
            case VersionStatement version:
                return Once(version) ? pattern with { Version = version.Version.Text } : pattern;
            case SkillStatement skill:
                return Once(skill) ? pattern with { Skill = skill.Text.Text } : pattern;
            case WearerStatement wearer:
                return Once(wearer) ? pattern with { Wearer = WearerOf(wearer) } : pattern;
            case HookStatement hook:
                return Once(hook) ? pattern with { HookMillimetres = NumberOf(hook.Millimetres) } : pattern;
            case ClaimsStatement claims:
                if (Once(claims)) context.Counting = claims.Scope == ClaimScope.WithoutTurningChain ? Counting.WithoutTurningChain : Counting.WithChains;
                return pattern;
            case FloatsStatement floats:
                if (Once(floats)) FloatsOf(floats);
                return pattern;
            case NotionStatement notion:
                _notions.Add(notion.Text.Text);
                return pattern;
            case YarnStatement yarn:
                if (!_yarnNames.TryAdd(yarn.Name.Text, yarn.Name.Span)) context.Findings.Add(DefinedTwice.At(yarn.Name.Span, yarn.Name.Text, _yarnNames[yarn.Name.Text]));
                _yarns.Add(YarnOf(yarn));
                return pattern;
            case EaseStatement ease:
                if (new EaseBinder(context).Bind(ease) is { } wanted) context.Eases.TryAdd(wanted.Name, wanted);
                return pattern;
            case GaugeStatement gauge:
                AddGauge(gauge);
                return pattern;
            case TurnStatement { NextRowOnly: false } turn:
                TurnBinder.Bind(context, turn, (stitch, rule) => context.Rules[stitch] = rule);
                return pattern;
            case UseStatement use:
                definitions.Use(use);
                return pattern;
            case StitchPatternStatement stitchPattern:
                definitions.Define(stitchPattern);
                return pattern;
            case MeasureStatement measure:
                Define(measure);
                return pattern;
            case CountStatement count:
                Define(count);
                return pattern;
            default:
                return pattern;
        }
    }

    private void FloatsOf(FloatsStatement floats)
    {
        if (floats.Most is { Denominator: 1, Numerator: > 0 and < 10_000 and var most }) context.Yarns.MostFloat = (int)most;
        else context.Findings.Add(StripesEmpty.Floats(floats.Most.Span));
    }

    private List<Swatch> SwatchesOf(List<StatementSyntax> lines)
    {
        var binder = new SwatchBinder(context, _yarns);
        var swatches = new List<Swatch>();
        foreach (var line in lines.OfType<SwatchStatement>())
        {
            if (binder.Bind(line) is { } swatch) swatches.Add(swatch);
        }

        return swatches;
    }

    // Before all else, so that it may stand anywhere: what it names is asked for by many lines.
    private Pattern Bodies(Pattern pattern, BodyStatement body)
    {
        if (!Once(body) || new BodyBinder(context).Bind(body) is not { } table) return pattern;
        // A garment for a child's body is for a child, unless the file says otherwise.
        var wearer = body.Table is { } name && !_wearerSaid ? BodyTables.WearerOf(name.Text) : pattern.Wearer;
        return pattern with { BodySource = table.Source, BodyRemark = table.Remark, Wearer = wearer };
    }

    private bool Once(StatementSyntax statement)
    {
        if (_once.TryAdd(statement.GetType(), statement)) return true;
        context.Findings.Add(SaidTwice.At(statement, _once[statement.GetType()].Span));
        return false;
    }

    private Wearer WearerOf(WearerStatement statement)
    {
        if (Enum.TryParse<Wearer>(statement.Wearer.Text, true, out var wearer) && wearer != Wearer.Unsaid) return wearer;
        context.Findings.Add(WearerUnknown.At(statement.Wearer.Span, statement.Wearer.Text));
        return Wearer.Unsaid;
    }

    private static Rational? NumberOf(NumberSyntax number) => Rational.Of(number.Numerator, number.Denominator);

    private static Rational? Times(Rational? number, long numerator, long denominator) =>
        number is { } n && Rational.Of(numerator, denominator) is { } factor ? n * factor : null;

    private Yarn YarnOf(YarnStatement statement)
    {
        var yarn = new Yarn(statement.Name.Text, statement.Description?.Text, null, null, null);
        foreach (var fact in statement.Facts)
        {
            var number = NumberOf(fact.Number);
            yarn = fact.Fact switch
            {
                YarnFact.Weight => yarn with { Weight = WeightOf(fact.Number) },
                YarnFact.Grams => yarn with { Grams = number },
                YarnFact.Ounces => yarn with { Grams = Times(number, 45359237, 1600000) },
                YarnFact.Metres => yarn with { Metres = number },
                YarnFact.Extra => yarn with { Extra = number },
                _ => yarn with { Metres = Times(number, 9144, 10000) },
            };
        }

        return yarn;
    }

    private int? WeightOf(NumberSyntax number)
    {
        if (number is { Denominator: 1, Numerator: >= 0 and <= YarnWeight.Heaviest }) return (int)number.Numerator;
        context.Findings.Add(YarnWeight.At(number.Span));
        return null;
    }

    private void AddGauge(GaugeStatement statement)
    {
        if (context.FabricOf(statement.Stitch) is not { } stitch)
        {
            context.GaugesInDoubt = true;
            return;
        }

        if (!_gaugeSpans.TryAdd(stitch, statement.Stitch.Span))
        {
            context.Findings.Add(DefinedTwice.Gauge(statement.Stitch.Span, statement.Stitch.Text, _gaugeSpans[stitch]));
            return;
        }

        var pattern = context.StitchPatterns.Find(statement.Stitch.Text);
        if (statement.OfRepeats && pattern is null) context.Findings.Add(GaugeRepeats.At(statement.Stitch.Span, statement.Stitch.Text));
        if (Over(statement.Stitches) is not { } stitches || Over(statement.Rows) is not { } rows)
        {
            context.GaugesInDoubt = true;
            return;
        }

        _gauges.Add(new Gauge(stitch, statement.OfRepeats && pattern is not null ? (stitches.Count * pattern.Multiple) ?? stitches.Count : stitches.Count, stitches.Length, rows.Count, rows.Length)
        {
            InInches = Units.IsImperial(statement.Stitches.Unit.Unit),
            Pattern = pattern,
            OfRepeats = statement.OfRepeats && pattern is not null,
        });
        context.Gauges = new GaugeBook([.. _gauges]);
    }

    private (Rational Count, Rational Length)? Over(GaugeSpanSyntax span)
    {
        if (span.Count.Numerator <= 0 || span.Length.Numerator <= 0)
        {
            context.Findings.Add(GaugeZero.At(span.Span));
            return null;
        }

        if (NumberOf(span.Count) is { } count && NumberOf(span.Length) is { } plain && plain * Units.Centimetres(span.Unit.Unit) is { } length) return (count, length);
        context.Findings.Add(TooLarge.At(span.Span, context.Findings, Sized.Where(context.Sizes, _ => true), Evaluator.LargestCount));
        return null;
    }

    private bool IsFree(NameSyntax name)
    {
        // It is still a name below, so that its uses are not faulted as well.
        if (context.TryStitch(name.Text) is not null) context.Findings.Add(NameIsStitch.At(name.Span, name.Text));
        if (context.StitchPatterns.SpanOf(name.Text) is { } pattern) context.Findings.Add(DefinedTwice.At(name.Span, name.Text, pattern));
        if (context.Scope.Find(name.Text) is not { OfBody: false } earlier) return true;
        context.Findings.Add(DefinedTwice.At(name.Span, name.Text, earlier.Span));
        return false;
    }

    private void Define(MeasureStatement statement)
    {
        if (!IsFree(statement.Name)) return;
        var lengths = context.Evaluate.Lengths(statement.Value);
        context.Scope.Define(new Definition(statement.Name.Text, lengths.Select(l => l is { } cm ? new Value(cm, true) : (Value?)null), statement.Name.Span));
        if (Array.TrueForAll(lengths, l => l is not null)) _measures.Add(new Measure(statement.Name.Text, [.. lengths.Select(l => l!.Value)]));
    }

    private void Define(CountStatement statement)
    {
        if (!IsFree(statement.Name)) return;
        var (counts, fitted) = new CountBinder(context).Bind(statement);
        context.Scope.Define(new Definition(statement.Name.Text, counts.Select(c => c is { } n ? new Value(n, false) : (Value?)null), statement.Name.Span));
        if (Array.TrueForAll(counts, c => c is not null)) _counts.Add(new NamedCount(statement.Name.Text, [.. counts.Select(c => c!.Value)]));
        if (fitted is not null) _fitted.Add(fitted);
    }
}
