using System.Globalization;
using Xunit;

namespace Turnrow.Cli.Tests;

/// <summary>The same patterns give the same bytes, wherever, whenever and in whatever order they are published.</summary>
public sealed class SameBytesTests(SameBytesTests.Usual usual) : IClassFixture<SameBytesTests.Usual>, IDisposable
{
    private static readonly string[] Names =
        [.. Directory.GetFiles(Repository.PathOf("patterns"), "*.turnrow").Select(file => Path.GetFileName(file)).Order(StringComparer.Ordinal)];

    private readonly ScratchFolder _folder = new();

    public void Dispose() => _folder.Dispose();

    [Theory]
    [InlineData("tr_TR.UTF-8", "Asia/Kathmandu")]
    [InlineData("de_DE.UTF-8", "America/St_Johns")]
    [InlineData("C", "UTC")]
    public void In_every_language_and_time_zone(string language, string zone)
    {
        var settings = new Dictionary<string, string> { ["LANG"] = language, ["LC_ALL"] = language, ["LANGUAGE"] = language, ["TZ"] = zone };
        AssertSame(Published("elsewhere", Names, settings));
        var expected = OutOfProcess.Run(Repository.PathOf("patterns"), ["check", .. Names]);
        Assert.Equal(expected, OutOfProcess.RunWith(settings, Repository.PathOf("patterns"), ["check", .. Names]));
    }

    [Fact]
    public void In_whatever_order_they_are_named() => AssertSame(Published("backwards", [.. Names.Reverse()], []));

    [Fact]
    public void From_whatever_folder()
    {
        var patterns = Path.GetRelativePath(_folder.Path, Repository.PathOf("patterns"));
        var ran = OutOfProcess.Run(_folder.Path, "build", patterns, "--out", "./far/../here");
        Assert.Equal((0, ""), (ran.Code, ran.Error));
        AssertSame(Read(_folder["here"]));
    }

    [Fact]
    public void Each_by_itself_as_all_together()
    {
        foreach (var name in Names) Published("each", [name], []);
        AssertSame(Read(_folder["each"]));
    }

    /// <summary>
    /// The program is built without the cultures of the machine, so this makes one that would show in every number and every letter that
    /// is written without saying how.
    /// </summary>
    [Fact]
    public void In_a_culture_that_writes_numbers_in_another_way()
    {
        var before = CultureInfo.CurrentCulture;
        var strange = (CultureInfo)CultureInfo.InvariantCulture.Clone();
        strange.NumberFormat.NumberDecimalSeparator = ",";
        strange.NumberFormat.NumberGroupSeparator = ".";
        strange.NumberFormat.NegativeSign = "~";
        strange.NumberFormat.PositiveSign = "&";
        try
        {
            CultureInfo.CurrentCulture = strange;
            var ran = InProcess.Turnrow(["build", .. Names.Select(name => Repository.PathOf("patterns/" + name)), "--out", _folder["strange"]]);
            Assert.Equal((0, ""), (ran.Code, ran.Error));
        }
        finally
        {
            CultureInfo.CurrentCulture = before;
        }

        AssertSame(Read(_folder["strange"]));
    }

    private Dictionary<string, byte[]> Published(string folder, string[] names, Dictionary<string, string> settings) =>
        Published(_folder, folder, names, settings);

    private static Dictionary<string, byte[]> Published(ScratchFolder within, string folder, string[] names, Dictionary<string, string> settings)
    {
        var ran = OutOfProcess.RunWith(settings, Repository.PathOf("patterns"), ["build", .. names, "--out", within[folder]]);
        Assert.Equal((0, ""), (ran.Code, ran.Error));
        return Read(within[folder]);
    }

    private static Dictionary<string, byte[]> Read(string folder) => Directory.GetFiles(folder).ToDictionary(file => Path.GetFileName(file), File.ReadAllBytes);

    private void AssertSame(Dictionary<string, byte[]> actual)
    {
        var expected = usual.Files;
        Assert.NotEmpty(expected);
        Assert.Equal(expected.Keys.Order(StringComparer.Ordinal), actual.Keys.Order(StringComparer.Ordinal));
        Assert.All(expected, file => Assert.True(file.Value.SequenceEqual(actual[file.Key]), file.Key));
    }

    /// <summary>What is published with the settings of the machine.</summary>
    public sealed class Usual : IDisposable
    {
        private readonly ScratchFolder _folder = new();

        public Usual()
        {
            Files = Published(_folder, "usual", Names, []);
        }

        internal Dictionary<string, byte[]> Files { get; }

        public void Dispose() => _folder.Dispose();
    }
}
