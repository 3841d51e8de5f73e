namespace Fastening.Tests.Joints;

/// <summary>
/// The joint solved directly, without any formula of the library: a bolt and clamped parts as springs in a ring of force, the contact in the
/// interface unable to pull. Forces in newtons, lengths in metres; the bolt force is found by bisection on equilibrium and compatibility.
/// </summary>
/// <param name="Bolt">Stretch of the bolt per newton.</param>
/// <param name="Parts">Squeeze of the parts per newton.</param>
/// <param name="Share">Share of the parts between the points where the axial load enters.</param>
/// <param name="Interference">By how much the slack parts are thicker than the slack bolt is long.</param>
public sealed record SpringRing(double Bolt, double Parts, double Share, double Interference)
{
    /// <summary>The ring whose force without a load is the preload.</summary>
    public static SpringRing Tightened(double bolt, double parts, double share, double preload) =>
        new(bolt, parts, share, preload * bolt + preload * parts);

    /// <summary>Bolt force, clamp force and gap under an axial load.</summary>
    public (double Bolt, double Clamp, double Gap) Under(double load)
    {
        // Closed: the parts outside the load carry the bolt force, those inside it the rest. What the ring lacks in length is the residual.
        double Residual(double boltForce) =>
            Bolt * boltForce + (1 - Share) * Parts * boltForce + Share * Parts * Math.Max(boltForce - load, 0) - Interference;

        double open = Residual(load);
        if (load > 0 && open >= 0) return (load, 0, open);
        double low = Math.Max(load, 0), high = Math.Abs(load) + 2 * Interference / (Bolt + (1 - Share) * Parts) + 1;
        for (int i = 0; i < 200; i++)
        {
            double middle = (low + high) / 2;
            if (Residual(middle) > 0) high = middle;
            else low = middle;
        }

        return (low, low - load, 0);
    }

    /// <summary>Strain energy at a state.</summary>
    public double EnergyAt(double boltForce, double clampForce) =>
        (Bolt + (1 - Share) * Parts) * boltForce * boltForce / 2 + Share * Parts * clampForce * clampForce / 2;
}
