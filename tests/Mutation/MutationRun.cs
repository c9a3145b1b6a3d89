using System.Globalization;

namespace Turnrow.Mutation;

/// <summary>The whole of it: a copy with switches, a survey, every change tried, and the share that the tests notice.</summary>
internal static class MutationRun
{
    private const double Wanted = 85;

    public static int In(string folder, bool again, bool ownAlone)
    {
        Directory.CreateDirectory(folder);
        var bench = new Workbench(Root(), Path.GetFullPath(folder));
        var (mutants, found) = bench.Prepare();
        Say($"{mutants.Count} changes compile, of {found}");
        var survey = Survey.Of(bench.Worker, mutants.Count);
        Say($"{survey.Count} tests pass as things are; failing and not used: {survey.Failing.Count}");
        survey.Failing.ForEach(Say);
        using var trial = new Trial(bench.Worker, survey, Path.Combine(folder, "results.txt"), ownAlone);
        if (again) trial.ForgetAlive();
        for (var i = 0; i < mutants.Count; i++)
        {
            trial.Run(mutants[i]);
            if (i % 50 == 49) Say($"{i + 1} tried");
        }

        return Reported(mutants, trial, Path.Combine(folder, "survivors.txt"));
    }

    private static int Reported(IReadOnlyList<Mutant> mutants, Trial trial, string file)
    {
        var alive = mutants.Where(mutant => !trial.Found(mutant)).ToList();
        File.WriteAllLines(file, alive.Select(mutant => $"{trial.Of(mutant)}\t{mutant.Key}"));
        foreach (var of in mutants.GroupBy(static mutant => mutant.File))
            Say($"{Share(of.Count(mutant => !alive.Contains(mutant)), of.Count()),5} % of {of.Count(),3}  {of.Key}");
        var share = Share(mutants.Count - alive.Count, mutants.Count);
        Say($"{share} % of {mutants.Count} changes make a test fail; the other {alive.Count} stand in {file}");
        return double.Parse(share, CultureInfo.InvariantCulture) >= Wanted ? 0 : 1;
    }

    private static string Share(int part, int whole) => (100.0 * part / whole).ToString("0.0", CultureInfo.InvariantCulture);

    private static void Say(string line) => Console.WriteLine(line);

    private static string Root()
    {
        for (var folder = new DirectoryInfo(AppContext.BaseDirectory); folder is not null; folder = folder.Parent)
            if (File.Exists(Path.Combine(folder.FullName, "Compiler.sln")))
                return folder.FullName;
        throw new InvalidOperationException("Compiler.sln is in no folder above " + AppContext.BaseDirectory);
    }
}
