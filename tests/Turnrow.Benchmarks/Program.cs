using BenchmarkDotNet.Running;
using Turnrow.Benchmarks;

BenchmarkRunner.Run<CheckBenchmarks>(args: args);
