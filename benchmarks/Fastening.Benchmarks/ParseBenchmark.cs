using BenchmarkDotNet.Attributes;

namespace Fastening.Benchmarks;

/// <summary>Reading text: a designation and a torque as entered; the baseline is the culture-free parse of one number.</summary>
public class ParseBenchmark
{
    private readonly string _number = "118.5";

    [Params("M16", "M16x1.5", "1/2-13 UNC")]
    public string Designation { get; set; } = "";

    [Benchmark(Baseline = true)]
    public double OneNumber() => double.Parse(_number, System.Globalization.CultureInfo.InvariantCulture);

    [Benchmark]
    public ScrewThread ParseDesignation() => ScrewThread.Parse(Designation);

    [Benchmark]
    public double ParseTorqueAsEntered() => Entered.Parse<UnitsNet.Torque>("118.5 lbf·ft").Value;
}
