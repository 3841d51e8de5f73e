using Fastening;
using UnitsNet;

namespace PumpCover;

/// <summary>How fast a bolt may be turned, and, when the procedure says so, how far.</summary>
internal sealed record RotationRules(Angle Travel, Duration ShortestTime, RotationRateLimit Limit, ToleranceWindow<Angle>? Window);
