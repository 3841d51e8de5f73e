using BenchmarkDotNet.Configs;
using BenchmarkDotNet.Diagnosers;
using BenchmarkDotNet.Running;

// From the top of the repository: dotnet run -c Release --project benchmarks/Fastening.Benchmarks -- --filter "*"
BenchmarkSwitcher.FromAssembly(typeof(Program).Assembly).Run(
    args, DefaultConfig.Instance.AddDiagnoser(MemoryDiagnoser.Default));
