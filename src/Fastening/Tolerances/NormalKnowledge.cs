namespace Fastening.Internals;

/// <summary>Probabilities of a normal quantity against a window.</summary>
internal static class NormalKnowledge
{
    /// <summary>p_c = Φ((T_U − y)/u) − Φ((T_L − y)/u) (JCGM 106:2012 §7, from memory).</summary>
    public static double ProbabilityWithin(in WindowLimits window, double mean, double deviation)
    {
        if (deviation == 0) return window.Classify(mean) == Conformity.Within ? 1 : 0;
        return NormalCurve.Between((window.Lower - mean) / deviation, (window.Upper - mean) / deviation);
    }

    /// <summary>1 − p_c = Φ((T_L − y)/u) + Φ((y − T_U)/u): nine deviations inside the limits it is 1e-19, where 1 − p_c is 0.</summary>
    public static double ProbabilityBeyond(in WindowLimits window, double mean, double deviation)
    {
        if (deviation == 0) return window.Classify(mean) == Conformity.Within ? 0 : 1;
        return NormalCurve.Below((window.Lower - mean) / deviation) + NormalCurve.Below((mean - window.Upper) / deviation);
    }
}
