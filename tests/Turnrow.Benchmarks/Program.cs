using BenchmarkDotNet.Running;
using Turnrow.Benchmarks;

// `startup` measures whole processes; anything else is for the benchmarks within one.
if (args is ["startup"]) return StartUp.Run();
string[] chosen = args.Length > 0 ? args : ["--filter", "*"];
// In seconds: what is measured is built first, which takes long on a busy machine.
BenchmarkSwitcher.FromAssembly(typeof(StartUp).Assembly).Run([.. chosen, "--buildTimeout", "1200"]);
return 0;
