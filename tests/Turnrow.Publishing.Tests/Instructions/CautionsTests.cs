using Xunit;

namespace Turnrow.Publishing.Tests.Instructions;

/// <summary>
/// Cautions for children and babies. Cords: ASTM F1816-18, crs.ul.com and the safety commission's questions and answers (none at hood and neck,
/// 3 in at waist and hem); EN 14682, the Finnish agency's page tukes.fi (hood and neck up to 7 years) and a summary of the 2007 text (14 cm).
/// Small parts: 16 CFR 1501.4, compliancegate.com; EN 71-1. Sleep: American Academy of Pediatrics, as quoted at moms.popsugar.com; 18 months:
/// highlandfeather.com. Toys: cemarking-handmadetoys.co.uk; crochets.site, 5 January 2026.
/// </summary>
public sealed class CautionsTests
{
    private const string Cords = "Cords and ties";
    private const string Parts = "Small parts";
    private const string Blankets = "Nothing loose and soft";
    private const string Toys = "A soft toy";

    [Theory]
    [InlineData("wearer child", "notion \"5 buttons\"", "tie", Cords, Parts)]
    [InlineData("wearer baby", "", "tie", Cords)]
    [InlineData("wearer baby", "", "hood-drawstring", Cords)]
    [InlineData("wearer child", "", "panel")]
    [InlineData("", "notion \"5 buttons\"", "tie")]
    [InlineData("wearer adult", "notion \"5 buttons\"", "tie")]
    [InlineData("wearer baby", "notion \"3 snaps (9 mm)\"", "panel", Parts)]
    [InlineData("wearer child", "notion \"glass beads\"", "panel", Parts)]
    [InlineData("wearer child", "notion \"a buttonhole twist\"", "panel")]
    [InlineData("wearer baby", "", "blanket", Blankets)]
    [InlineData("wearer child", "", "blanket")]
    [InlineData("wearer baby\npattern \"Pram Blanket\"", "", "square", Blankets)]
    [InlineData("wearer baby\npattern \"Rattle Hare\"", "notion \"toy stuffing\"", "body-front", Toys)]
    [InlineData("wearer child\npattern \"Hare\"", "notion \"2 safety eyes\"\nnotion \"toy stuffing\"", "body-front", Parts, Toys)]
    [InlineData("pattern \"Baby Blanket\"", "", "square")]
    [InlineData("sizes \"6 months\"\nbody babies, cm", "notion \"2 buttons\"", "tie", Cords, Parts)]
    [InlineData("sizes 6\nbody children, cm", "", "tie", Cords)]
    [InlineData("sizes 6\nbody youth, in", "", "tie", Cords)]
    [InlineData("sizes M\nbody women, cm", "notion \"2 buttons\"", "tie")]
    [InlineData("sizes 6\nwearer adult\nbody children, cm", "", "tie")]
    public void They_stand_only_where_they_apply(string header, string notion, string piece, params string[] told)
    {
        var text = Of(header, notion, piece);
        Assert.Equal(told, new[] { Cords, Parts, Blankets, Toys }.Where(caution => text.Contains($"- {caution}", StringComparison.Ordinal)));
        Assert.Equal(told.Length > 0, text.Contains("## Cautions", StringComparison.Ordinal));
    }

    [Theory]
    [InlineData("wearer child", "", "tie", "ASTM F1816: none at hood and neck, at waist and hem no more than 3 in")]
    [InlineData("wearer child", "", "tie", "EN 14682: none at hood and neck up to 7 years, at waist and hem no more than 14 cm")]
    [InlineData("wearer baby", "notion \"2 buttons\"", "panel", "choke a baby. For children under three leave them out")]
    [InlineData("wearer baby", "notion \"2 buttons\"", "panel", "16 CFR 1501")]
    [InlineData("wearer baby", "", "blanket", "first twelve months")]
    [InlineData("wearer baby", "", "blanket", "The advice of pediatricians in the USA")]
    [InlineData("wearer baby", "", "toy", "EN 71")]
    [InlineData("wearer child", "", "tie", "Local rules decide what is allowed where it is worn or sold; ask a safety professional")]
    public void Each_names_its_source_and_leaves_it_to_local_rules(string header, string notion, string piece, string words) =>
        Assert.Contains(words, Of(header, notion, piece), StringComparison.Ordinal);

    [Fact]
    public void They_stand_behind_the_materials_and_before_the_work()
    {
        var text = Of("wearer baby", "notion \"2 buttons\"", "panel");
        var places = new[] { "## Materials", "## Cautions", "## Abbreviations", "Row 1" }.Select(words => text.IndexOf(words, StringComparison.Ordinal)).ToList();
        Assert.DoesNotContain(-1, places);
        Assert.Equal(places.Order(), places);
    }

    private static string Of(string header, string notion, string piece) =>
        Written.Of($"{header}\n{notion}\npiece {piece}\nbegin with 4 stitches\nrow 1 RS: sc across");
}
