using Fastening.Equations;
using Fastening.Internals;
using UnitsNet;

namespace Fastening;

/// <summary>A bolt of one shank diameter as it is ordered: its lengths divide the grip into shank and free thread.</summary>
internal sealed class BoltCut(Stated<Length> length, Stated<Length> threadedLength, Stated<Length> grip)
{
    public Term Shank => BoltComplianceEquations.ShankLengthEquation.Of(length.Term, threadedLength.Term, grip.Term);

    public Term FreeThread => BoltComplianceEquations.FreeThreadLengthEquation.Of(grip.Term, Shank);

    public Term BeyondGrip => BoltComplianceEquations.BeyondGripEquation.Of(length.Term, grip.Term);
}
