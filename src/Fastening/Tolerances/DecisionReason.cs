namespace Fastening.Internals;

/// <summary>A decision in words.</summary>
internal static class DecisionReason
{
    public static string For(DecisionZone zone, in WindowLimits window, in GuardBands bands, double reading, string unit, string rule)
    {
        string Show(double value) => Print.Number(value, unit);
        string limits = !window.HasUpper ? $"at least {Show(window.Lower)}"
            : !window.HasLower ? $"at most {Show(window.Upper)}"
            : $"{Show(window.Lower)} to {Show(window.Upper)}";
        string what = $"{Show(reading)} against {limits}";
        double inside = Math.Min(reading - window.Lower, window.Upper - reading);
        string where = inside >= 0 ? $"{Show(inside)} inside the {(window.IsOneSided ? "" : "nearer ")}limit" : $"{Show(-inside)} beyond the limit";
        return zone switch
        {
            DecisionZone.Accept => $"Accepted: {what} is {where}; the rule ({rule}) {Band(bands, Show)}.",
            DecisionZone.ConditionalAccept when double.IsNaN(bands.Inside) || window.Shrink(bands.Inside) is null =>
                $"Cannot tell: {what} is {where}, but by the rule ({rule}) the window is too narrow for this uncertainty: no reading is accepted.",
            DecisionZone.ConditionalAccept => $"Cannot tell: {what} is {where}, which is acceptance on condition; the rule ({rule}) {Band(bands, Show)}.",
            DecisionZone.ConditionalReject => $"Cannot tell: {what} is {where}, which is rejection on condition; the rule ({rule}) rejects from {Show(bands.Outside)} beyond the limit.",
            DecisionZone.Reject => $"Rejected: {what} is {where}; the rule ({rule}) {Rejects(bands, Show)}.",
            _ => "No decision: the reading is not a finite number.",
        };
    }

    private static string Band(in GuardBands bands, Func<double, string> show) => bands.Inside switch
    {
        0 => "asks for no distance",
        < 0 => $"permits up to {show(-bands.Inside)} beyond a limit",
        _ => $"asks for {show(bands.Inside)} inside",
    };

    private static string Rejects(in GuardBands bands, Func<double, string> show) => bands.Inside < 0
        ? $"permits up to {show(-bands.Inside)} beyond a limit"
        : bands.Outside == 0 ? "rejects what is beyond a limit" : $"rejects from {show(bands.Outside)} beyond the limit";
}
