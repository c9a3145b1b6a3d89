using Xunit;

namespace Turnrow.Syntax.Tests;

/// <summary>The golden-file helper must never hide a difference, and never write where nobody asked it to.</summary>
public sealed class GoldenTests : IDisposable
{
    private const string Name = "tests/Some.Tests/Golden/rows.txt";
    private readonly DirectoryInfo _root = Directory.CreateTempSubdirectory("turnrow-golden-");

    private string FilePath => Path.Combine(_root.FullName, Name);

    public void Dispose() => _root.Delete(recursive: true);

    [Fact]
    public void The_same_text_passes()
    {
        Store("row 1: 77\n");
        Assert.Null(Golden.Compare(_root.FullName, Name, "row 1: 77\n", accept: false));
    }

    [Fact]
    public void A_missing_file_fails_and_stays_missing()
    {
        var fault = Golden.Compare(_root.FullName, Name, "row 1: 77\n", accept: false);
        Assert.StartsWith(Name + " is missing, first at line 1:\n", fault, StringComparison.Ordinal);
        Assert.Contains("TURNROW_ACCEPT=1", fault, StringComparison.Ordinal);
        Assert.Empty(_root.GetFileSystemInfos());
    }

    [Fact]
    public void A_different_file_shows_its_first_differing_lines_and_stays_as_it_was()
    {
        const string before = "row 1: 77\nrow 2: 77\nrow 3: 79\n";
        Store(before);
        var fault = Golden.Compare(_root.FullName, Name, "row 1: 77\nrow 2: 78\nrow 3: 79\n", accept: false);
        Assert.Contains("differs, first at line 2:\n- row 2: 77\n- row 3: 79\n- \n+ row 2: 78\n", fault, StringComparison.Ordinal);
        Assert.Equal(before, File.ReadAllText(FilePath));
    }

    [Theory]
    [InlineData("row 1\n", "row 1\r\n", "+ row 1\\r")]
    [InlineData("row 1\n", "row 1", "first at line 2")]
    [InlineData("row 1\n", "row 1 \n", "first at line 1")]
    public void A_line_end_or_a_space_is_a_difference(string expected, string actual, string shown)
    {
        Store(expected);
        Assert.Contains(shown, Golden.Compare(_root.FullName, Name, actual, accept: false), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(false)]
    [InlineData(true)]
    public void Accepting_writes_the_file_whether_or_not_it_was_there(bool there)
    {
        if (there)
            Store("old\n");
        Assert.Null(Golden.Compare(_root.FullName, Name, "new\n", accept: true));
        Assert.Equal("new\n"u8.ToArray(), File.ReadAllBytes(FilePath));
    }

    [Theory]
    [InlineData("1", null, true)]
    [InlineData("1", "", true)]
    [InlineData("1", "true", false)]
    [InlineData("1", "false", false)]
    [InlineData("0", null, false)]
    [InlineData(null, null, false)]
    public void Only_a_person_can_accept(string? accept, string? ci, bool may) => Assert.Equal(may, Golden.MayWrite(accept, ci));

    [Theory]
    [InlineData("src/rows.txt")]
    [InlineData("rows.txt")]
    [InlineData("tests/../src/rows.txt")]
    public void A_file_elsewhere_is_refused_even_when_accepting(string path)
    {
        Assert.Contains("a golden file lies under", Golden.Compare(_root.FullName, path, "text", accept: true), StringComparison.Ordinal);
        Assert.Empty(_root.GetFileSystemInfos());
    }

    [Fact]
    public void The_root_is_the_folder_of_the_solution() => Assert.True(File.Exists(Repository.PathOf("Compiler.sln")));

    private void Store(string text)
    {
        Directory.CreateDirectory(Path.GetDirectoryName(FilePath)!);
        File.WriteAllText(FilePath, text);
    }
}
