using System.Text.RegularExpressions;
using System.Xml.Linq;
using Xunit;

namespace Turnrow.Cli.Tests;

/// <summary>The rules of the house that no compiler checks: which way the arrows point, what is public, what files say.</summary>
public sealed partial class HouseTests
{
    private const int LongestFile = 500;

    /// <summary>What each project may refer to.</summary>
    private static readonly Dictionary<string, string[]> Arrows = new()
    {
        ["Turnrow.Syntax"] = [],
        ["Turnrow.Fabric"] = [],
        ["Turnrow.Compiler"] = ["Turnrow.Syntax", "Turnrow.Fabric"],
        ["Turnrow.Publishing"] = ["Turnrow.Fabric"],
        ["Turnrow.Cli"] = ["Turnrow.Syntax", "Turnrow.Fabric", "Turnrow.Compiler", "Turnrow.Publishing"],
    };

    [Fact]
    public void References_between_projects_point_one_way()
    {
        var projects = Directory.GetFiles(Repository.PathOf("src"), "*.csproj", SearchOption.AllDirectories);
        Assert.NotEmpty(projects);
        var wrong = projects.SelectMany(project =>
            References(project).Where(to => !Allows(Path.GetFileNameWithoutExtension(project), to))
                .Select(to => $"{Path.GetFileNameWithoutExtension(project)} -> {to}"));
        None(wrong);
        Assert.All(projects, project => Assert.Contains(Path.GetFileNameWithoutExtension(project), Arrows.Keys));
    }

    [Fact]
    public void Nothing_public_in_Syntax_shows_the_parser_generator()
    {
        Assert.NotEmpty(PublicSurface.Mentions("Turnrow.Syntax", "System"));
        None(PublicSurface.Mentions("Turnrow.Syntax", "Antlr4"));
    }

    [Fact]
    public void No_file_names_a_machine_or_a_registry()
    {
        var wrong = TrackedFiles.All.Where(file => !file.StartsWith(".ci/", StringComparison.Ordinal))
            .SelectMany(file => TrackedFiles.Lines(file).Select((line, index) => (line, place: $"{file}:{index + 1}")))
            .Where(at => MachinePath().IsMatch(at.line) || RegistryHost().IsMatch(at.line))
            .Select(at => $"{at.place}: {at.line.Trim()}");
        None(wrong);
    }

    [Fact]
    public void Every_source_file_can_be_read_in_one_go()
    {
        var wrong = TrackedFiles.All
            .Where(file => file.StartsWith("src/", StringComparison.Ordinal) || file.StartsWith("tests/", StringComparison.Ordinal))
            .Where(file => file.EndsWith(".cs", StringComparison.Ordinal) && !file.Contains("/Generated/", StringComparison.Ordinal))
            .Select(file => (file, lines: TrackedFiles.Lines(file).Count()))
            .Where(at => at.lines >= LongestFile)
            .Select(at => $"{at.file}: {at.lines} lines");
        None(wrong);
    }

    [Theory]
    [InlineData("README.md")]
    [InlineData("DEVELOPERS.md")]
    [InlineData("grammar/README.md")]
    [InlineData("src/Turnrow.Cli/README.md")]
    public void Every_path_and_link_in_the_documents_leads_somewhere(string document)
    {
        None(DocumentPaths.Named(document).Where(path => !TrackedFiles.Has(path)));
    }

    [Fact]
    public void Every_banned_symbol_comes_with_its_reason()
    {
        Assert.All(TrackedFiles.Lines("src/BannedSymbols.txt"), line => Assert.Matches(@"^[TPMN]:[^;]+;.{20,}$", line));
    }

    [Theory]
    [InlineData("work")]
    [InlineData("root")]
    [InlineData("home")]
    public void A_machine_path_is_told_from_any_other(string folder)
    {
        Assert.Matches(MachinePath(), $"see \"/{folder}/x\"");
        Assert.DoesNotMatch(MachinePath(), $"src/{folder}/x and https://example.org/{folder}/");
    }

    // Assert.Empty cuts its list short; whoever mends this needs all of it.
    private static void None(IEnumerable<string> wrong)
    {
        var all = string.Join('\n', wrong);
        if (all.Length > 0)
            Assert.Fail(all);
    }

    private static bool Allows(string from, string to) => Arrows.TryGetValue(from, out var allowed) && allowed.Contains(to);

    private static IEnumerable<string> References(string project) =>
        XDocument.Load(project).Descendants("ProjectReference")
            .Select(reference => Path.GetFileNameWithoutExtension(reference.Attribute("Include")!.Value.Replace('\\', '/')));

    [GeneratedRegex(@"(?<![\w.~-])/(work|root|home|tmp)/")]
    private static partial Regex MachinePath();

    [GeneratedRegex(@"\b[a-z0-9.-]*(nuget|npm|maven|pypi|debian|artifactory)[a-z0-9-]*\.(org|com|net|io|dev)\b", RegexOptions.IgnoreCase)]
    private static partial Regex RegistryHost();
}
