namespace Fastening.Internals;

/// <summary>A decision in words.</summary>
internal static class DecisionReason
{
    public static string For(DecisionZone zone, in WindowLimits window, in GuardBands bands, double reading, Func<double, string> show, string rule)
    {
        string limits = !window.HasUpper ? $"at least {show(window.Lower)}"
            : !window.HasLower ? $"at most {show(window.Upper)}"
            : $"{show(window.Lower)} to {show(window.Upper)}";
        string what = $"{show(reading)} against {limits}";
        double inside = Math.Min(reading - window.Lower, window.Upper - reading);
        string where = inside >= 0 ? $"{show(inside)} inside the {(window.IsOneSided ? "" : "nearer ")}limit" : $"{show(-inside)} beyond the limit";
        return zone switch
        {
            DecisionZone.Accept => $"Accepted: {what} is {where}; the rule ({rule}) {Band(bands, show)}.",
            DecisionZone.ConditionalAccept when double.IsNaN(bands.Inside) || window.Shrink(bands.Inside) is null =>
                $"Cannot tell: {what} is {where}, but by the rule ({rule}) the window is too narrow for this uncertainty: no reading is accepted.",
            DecisionZone.ConditionalAccept => $"Cannot tell: {what} is {where}, which is acceptance on condition; the rule ({rule}) {Band(bands, show)}.",
            DecisionZone.ConditionalReject => $"Cannot tell: {what} is {where}, which is rejection on condition; the rule ({rule}) rejects from {show(bands.Outside)} beyond the limit.",
            DecisionZone.Reject => $"Rejected: {what} is {where}; the rule ({rule}) {Rejects(bands, show)}.",
            _ => "No decision: the reading is not a finite number.",
        };
    }

    private static string Band(in GuardBands bands, Func<double, string> show) => bands.Inside switch
    {
        0 => "requires no distance from the limit",
        < 0 => $"permits up to {show(-bands.Inside)} beyond a limit",
        _ => $"requires {show(bands.Inside)} inside",
    };

    private static string Rejects(in GuardBands bands, Func<double, string> show) => bands.Inside < 0
        ? $"permits up to {show(-bands.Inside)} beyond a limit"
        : bands.Outside == 0 ? "rejects what is beyond a limit" : $"rejects from {show(bands.Outside)} beyond the limit";
}
