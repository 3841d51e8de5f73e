using System.Globalization;
using Fastening.Equations;

namespace Fastening.Tests.Equations;

/// <summary>
/// Every equation against its own text in some 70 digits, at random points, at the ends of its ranges, where inputs meet and close to the limit of
/// its condition. The inputs are exact doubles, so a method whose form is sound is right to a few units of the last place. Where the equation itself
/// takes the difference of rounded terms it cannot be: it is named below, and may lose no more than its condition says. Any other loss is a form to
/// be mended, in the text and in the method.
/// </summary>
public class EquationDigitsTests
{
    private const double Unit = 1.0 / (1L << 53);
    private const double Few = 16;

    /// <summary>The equation is a difference of terms that are rounded themselves, and no other form of it takes exact numbers apart.</summary>
    private static readonly string[] Cancelling =
    [
        "chart.b3",
        "chart.d3",
        "decision.posterior-mean",
        "engagement.external-thickness",
        "engagement.internal-thickness",
        "friction.exact-total",
        "guarantee.largest-deviation",
        "joint.bolt-force",
        "joint.clamp-force",
        "joint.free-growth",
        "joint.thermal-loss-behind",
        "parts.sleeve-length",
        "sensitivity.exact-thread-radius",
        "thread.high-strength-stress-diameter",
        "thread.iso-root-diameter",
        "thread.unified-minor-area-diameter",
        "thread.unified-root-diameter",
        "tolerance-factor.natrella",
        "torque.exact-thread-arm",
        "torque.iso-printed-loosening-thread-arm",
        "torque.linear-loosening-thread-arm",
        "torque.printed-loosening-thread-arm",
        "wrench.ratio-per-adapter-angle",
        "wrench.ratio-per-adapter-length",
        "wrench.torque-ratio",
    ];

    public static TheoryData<string> Ids => EquationCatalogue.Ids;

    public static TheoryData<string> CancellingIds => [.. Cancelling];

    [Theory]
    [MemberData(nameof(Ids))]
    public void Is_right_to_its_last_digits(string id)
    {
        Equation equation = EquationCatalogue.Find(id);
        foreach (double[] values in EquationPoints.Of(equation))
        {
            double actual = equation.Invoke(values);
            Assert.True(double.IsFinite(actual), $"{equation} at {Show(values)}: {actual}");
            (double error, double size, double condition) = Error(equation, values, actual);
            double permitted = Few * size + (Cancelling.Contains(id) ? condition : 0);
            Assert.True(
                error <= permitted * Unit,
                $"{equation} at {Show(values)}: {actual:R} is off by {error / Unit / size:G4} units of the last place; its condition is {condition / size:G4}");
        }
    }

    /// <summary>A name that stays on the list after its form was mended would hide the next loss.</summary>
    [Theory]
    [MemberData(nameof(CancellingIds))]
    public void Is_named_only_where_it_cancels(string id)
    {
        Equation equation = EquationCatalogue.Find(id);
        Assert.Contains(EquationPoints.Of(equation), values =>
        {
            (double error, double size, _) = Error(equation, values, equation.Invoke(values));
            return error > Few / 2 * size * Unit;
        });
    }

    private static (double Error, double Size, double Condition) Error(Equation equation, double[] values, double actual)
    {
        BigReal[] inputs = [.. values.Select(BigReal.FromDouble)];
        BigReal exact = BigEvaluation.Of(equation, inputs);
        double error = BigReal.Abs(BigReal.FromDouble(actual) - exact).ToDouble(), size = Math.Abs(exact.ToDouble());
        return (error, size, error <= Few * size * Unit ? 0 : BigEvaluation.Condition(equation, inputs, exact));
    }

    private static string Show(double[] values) => string.Join(", ", values.Select(value => value.ToString("R", CultureInfo.InvariantCulture)));
}
