using BenchmarkDotNet.Running;
using Turnrow.Benchmarks;

// `startup` measures whole processes; anything else is for the benchmarks within one.
if (args is ["startup"]) return StartUp.Run();
BenchmarkSwitcher.FromAssembly(typeof(StartUp).Assembly).Run(args.Length > 0 ? args : ["--filter", "*"]);
return 0;
