using System.Numerics;

namespace Fastening.Internals;

/// <summary>One operation, written once for a single element and once for a vector of them; both must agree bit for bit.</summary>
internal interface IBatchKernel
{
    double Apply(double value);

    Vector<double> Apply(Vector<double> values);
}
