using Fastening.Internals;
using UnitsNet;

namespace Fastening;

/// <summary>The pressure that a clamped material carries under head, nut or washer before it creeps: p_G of VDI 2230.</summary>
/// <remarks>
/// Two editions stand side by side and differ for the same material; none is preferred. Read in a table that reproduces both, not in the
/// guideline; the 2015 edition is not here.
/// </remarks>
/// <example><code>BearingPressureLimit.Vdi2230Of2003.Single(x => x.MaterialNumber == "0.6020").Limit.Megapascals   // 900, EN-GJL-250
/// BearingPressureLimit.Vdi2230Of1986.Single(x => x.Material == "GG 25").Limit.Megapascals          // 800, the same iron</code></example>
public sealed class BearingPressureLimit
{
    private BearingPressureLimit(DataRow row)
    {
        Material = row["material"];
        MaterialNumber = row["material_number"].Length == 0 ? null : row["material_number"];
        TensileStrength = Pressure.FromMegapascals(row.Number("tensile_mpa"));
        Limit = Pressure.FromMegapascals(row.Number("limit_mpa"));
        Provenance = new Provenance(row["edition"], row["confidence"], row["note"]);
        IsUnverified = row["confidence"].EndsWith("unverified there", StringComparison.Ordinal);
        ElasticMaterialName = row["elastic_material"];
    }

    /// <summary>Table A9 of VDI 2230 part 1, edition of 2003.</summary>
    public static IReadOnlyList<BearingPressureLimit> Vdi2230Of2003 => Tables.Of2003;

    /// <summary>The limiting surface pressures of VDI 2230, edition of 1986.</summary>
    public static IReadOnlyList<BearingPressureLimit> Vdi2230Of1986 => Tables.Of1986;

    /// <summary>The material as the edition names it.</summary>
    public string Material { get; }

    /// <summary>Material number, for example <c>1.0036</c>; null where the edition gives none.</summary>
    public string? MaterialNumber { get; }

    /// <summary>Least tensile strength R_m of the material.</summary>
    public Pressure TensileStrength { get; }

    /// <summary>Limiting surface pressure p_G.</summary>
    public Pressure Limit { get; }

    /// <summary>Where it comes from: the edition, <c>VDI 2230:2003</c>, is the source.</summary>
    public Provenance Provenance { get; }

    /// <summary>Whether the table read marks the value as not yet confirmed by newer research.</summary>
    public bool IsUnverified { get; }

    /// <summary>The material of <see cref="ElasticMaterial.All"/> whose grades name this one; empty when none does.</summary>
    internal string ElasticMaterialName { get; }

    /// <inheritdoc />
    public override string ToString() =>
        Print.Text($"{Material}: {Limit:0.#} ({Provenance.Source}{(IsUnverified ? ", unverified there" : "")})");

    private static class Tables
    {
        private static readonly BearingPressureLimit[] All =
            [.. DataFile.Read("vdi-2230-bearing-pressure.csv").Select(row => new BearingPressureLimit(row))];

        public static IReadOnlyList<BearingPressureLimit> Of2003 { get; } = OfEdition("VDI 2230:2003");

        public static IReadOnlyList<BearingPressureLimit> Of1986 { get; } = OfEdition("VDI 2230:1986");

        private static System.Collections.ObjectModel.ReadOnlyCollection<BearingPressureLimit> OfEdition(string edition) =>
            Array.AsReadOnly(Array.FindAll(All, limit => limit.Provenance.Source == edition));
    }
}
