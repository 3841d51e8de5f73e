using Fastening.Equations;
using UnitsNet;

namespace Fastening;

/// <summary>The body of pressure cut at the faces of the layers, where cones meet and where they reach the outside.</summary>
internal readonly struct ConePieces(ClampedLayer[] layers, Held<Length>? outer, Term hole, Term angle)
{
    private readonly Term _growth = ConeGeometryEquations.ConeGrowthEquation.Of(angle);

    public static Term Add(Term? before, Term piece) =>
        before is Term delta ? ClampedPartsEquations.PartsResilienceEquation.Of(delta, piece) : piece;

    public Term ResilienceOf(Term bearing, JointForm form)
    {
        ConeStart[] fromBelow = StartsFromBelow(form == JointForm.ThroughBolt ? new ConeStart(bearing) : ConeStart.Nowhere);
        var head = new ConeStart(bearing);
        Term? delta = null;
        for (int i = 0; i < layers.Length; i++)
        {
            string name = layers[i].NameAt(i);
            Term thickness = layers[i].ThicknessOf(name);
            Term? limit = layers[i].OutsideOf(name, outer);
            head = Within(head, limit);
            delta = AddLayer(delta, layers[i].ModulusOf(name), thickness, limit, head, fromBelow[i]);
            head = Within(head.Below(thickness), limit);
        }

        return delta!.Value;
    }

    /// <summary>Where the cone from below stands as it enters each layer; a layer that is narrower makes it begin again.</summary>
    private ConeStart[] StartsFromBelow(ConeStart cone)
    {
        var starts = new ConeStart[layers.Length];
        for (int i = layers.Length - 1; i >= 0; i--)
        {
            string name = layers[i].NameAt(i);
            Term? limit = layers[i].OutsideOf(name, outer);
            starts[i] = Within(cone, limit);
            cone = Within(starts[i].Below(layers[i].ThicknessOf(name)), limit);
        }

        return starts;
    }

    private ConeStart Within(in ConeStart cone, Term? limit) => limit is Term outside && cone.At(_growth.Value) > outside.Value ? new ConeStart(outside) : cone;

    /// <summary>What lies in the cone that opens from the head, what in that from below; the rest is a sleeve as wide as the layer.</summary>
    private Term? AddLayer(Term? delta, Term modulus, Term thickness, Term? limit, in ConeStart head, in ConeStart below)
    {
        Term upper = head.DiameterAt(angle);
        if (!below.IsThere) return Add(delta, Frustum(modulus, upper, thickness));
        Term lower = below.DiameterAt(angle);
        Term rise = ConeGeometryEquations.MeetingConeEquation.Of(thickness, lower, upper, _growth), fall;
        if (limit is Term outside && !(upper.Value + _growth.Value * rise.Value <= outside.Value))
        {
            rise = ConeGeometryEquations.LimitedConeEquation.Of(outside, upper, _growth);
            fall = ConeGeometryEquations.LimitedConeEquation.Of(outside, lower, _growth);
            if (rise.Value > 0) delta = Add(delta, Frustum(modulus, upper, rise));
            Term sleeve = Left(Left(thickness, rise), fall);
            if (sleeve.Value > 0) delta = Add(delta, ClampedPartsEquations.SleeveResilienceEquation.Of(sleeve, modulus, outside, hole));
        }
        else
        {
            fall = ConeGeometryEquations.LengthLeftEquation.Of(thickness, rise);
            if (rise.Value > 0) delta = Add(delta, Frustum(modulus, upper, rise));
        }

        return fall.Value > 0 ? Add(delta, Frustum(modulus, lower, fall)) : delta;
    }

    private static Term Left(Term length, Term cone) => cone.Value > 0 ? ConeGeometryEquations.LengthLeftEquation.Of(length, cone) : length;

    private Term Frustum(Term modulus, Term diameter, Term length) =>
        ClampedPartsEquations.FrustumResilienceEquation.Of(modulus, hole, angle, diameter, length);
}
