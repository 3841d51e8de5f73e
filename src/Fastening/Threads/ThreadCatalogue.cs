using Fastening.Internals;
using UnitsNet;

namespace Fastening;

/// <summary>The threads of ISO 261 and ASME B1.1, from the data files of the package; one instance per thread, read once at first use.</summary>
internal sealed class ThreadCatalogue
{
    private static readonly Lazy<ThreadCatalogue> Loaded = new(() => new ThreadCatalogue());

    private readonly Dictionary<long, ThreadSize> _metric, _unified;

    private ThreadCatalogue()
    {
        Metric = DataFile.Read("iso-261-metric.csv").Select(MetricSize).ToList();
        Unified = DataFile.Read("asme-b1-1-unified.csv").Select(UnifiedSize).ToList();
        _metric = Metric.ToDictionary(size => size.Diameter);
        _unified = Unified.ToDictionary(size => size.Diameter);
    }

    public static ThreadCatalogue Default => Loaded.Value;

    /// <summary>The sizes of ISO 261, smallest first.</summary>
    public IReadOnlyList<ThreadSize> Metric { get; }

    /// <summary>The sizes of ASME B1.1, smallest first.</summary>
    public IReadOnlyList<ThreadSize> Unified { get; }

    public ThreadSize? SizeOf(ThreadProfile profile, long diameter) =>
        (profile == ThreadProfile.IsoMetric ? _metric : _unified).TryGetValue(diameter, out ThreadSize? size) ? size : null;

    /// <summary>The thread, if the catalogue has exactly one that fits.</summary>
    public ScrewThread? Find(in ThreadDesignation wanted)
    {
        ScrewThread? found = SizeOf(wanted.Profile, wanted.Diameter)?.Only(wanted.Pitch, wanted.Series);
        if (wanted.NumberedDiameter == 0) return found;

        ScrewThread? numbered = SizeOf(wanted.Profile, wanted.NumberedDiameter)?.Only(wanted.Pitch, wanted.Series);
        return found is null ? numbered : numbered is null ? found : null;
    }

    /// <summary>What the standard calls a thread of this diameter and pitch (mm and mm, or in and threads per inch); null when it has none.</summary>
    public string? NameOf(ThreadProfile profile, double diameter, double pitch) =>
        TryMillionths(diameter, out long d) && TryMillionths(pitch, out long p) && SizeOf(profile, d) is ThreadSize size
            ? size.Only(p, null)?.Designation
            : null;

    private static ThreadSize MetricSize(DataRow row)
    {
        double diameter = row.Number("nominal_diameter_mm");
        string name = Print.Text($"M{diameter}");
        var threads = new List<CatalogueThread>();
        foreach (double pitch in row.Numbers("coarse_pitch_mm")) Add(name, pitch, ThreadDesignation.Coarse);
        foreach (double pitch in row.Numbers("fine_pitches_mm")) Add(Print.Text($"{name}x{pitch}"), pitch, ThreadDesignation.Fine);
        return new ThreadSize(name, Millionths(diameter), threads);

        void Add(string designation, double pitch, string series)
        {
            double d = Si.Of(Length.FromMillimeters(diameter)), p = Si.Of(Length.FromMillimeters(pitch));
            ScrewThread thread = ScrewThread.FromCatalogue(ThreadProfile.IsoMetric, designation, d, p);
            threads.Add(new CatalogueThread(thread, Millionths(pitch), series));
        }
    }

    private static ThreadSize UnifiedSize(DataRow row)
    {
        double diameter = row.Number("basic_major_diameter_in");
        string name = row["size"];
        var threads = new List<CatalogueThread>();
        Add("unc_tpi", ThreadDesignation.Unc);
        Add("unf_tpi", ThreadDesignation.Unf);
        Add("unef_tpi", ThreadDesignation.Unef);
        Add("un_tpi", ThreadDesignation.Un);
        return new ThreadSize(name, Millionths(diameter), threads);

        void Add(string column, string series)
        {
            double d = Si.Of(Length.FromInches(diameter));
            foreach (double threadsPerInch in row.Numbers(column))
            {
                string designation = Print.Text($"{name}-{threadsPerInch} {series}");
                ScrewThread thread = ScrewThread.FromCatalogue(ThreadProfile.Unified, designation, d, ScrewThread.PitchOf(threadsPerInch));
                threads.Add(new CatalogueThread(thread, Millionths(threadsPerInch), series));
            }
        }
    }

    private static long Millionths(double number) => (long)Math.Round(number * TextCursor.Million);

    private static bool TryMillionths(double number, out long millionths)
    {
        double scaled = number * TextCursor.Million;
        millionths = (long)Math.Round(scaled);
        return Math.Abs(scaled - millionths) <= 1e-12 * scaled;
    }
}
