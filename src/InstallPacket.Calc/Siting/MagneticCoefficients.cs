using InstallPacket.Calc.Sources;

namespace InstallPacket.Calc.Siting;

/// <summary>One spherical harmonic model of the earth's magnetic field: main field and its yearly change.</summary>
public sealed class MagneticCoefficients
{
    private static readonly Lazy<MagneticCoefficients> Wmm2025Loaded = new(() =>
        Of("WMM2025", 2025.0, 5417, EmbeddedTable.Rows("Siting/wmm2025-coefficients.csv")));

    private static readonly Lazy<MagneticCoefficients> Wmm2020Loaded = new(() =>
        Of("WMM2020", 2020.0, 5625, EmbeddedTable.Rows("Siting/wmm2020-coefficients.csv")));

    private readonly double[] _g, _h, _gDot, _hDot;

    private MagneticCoefficients(string name, double epoch, double sigmaTerm, int degree)
    {
        (Name, EpochYear, SigmaTermNT, Degree) = (name, epoch, sigmaTerm, degree);
        var size = Index(degree, degree) + 1;
        (_g, _h, _gDot, _hDot) = (new double[size], new double[size], new double[size], new double[size]);
    }

    /// <summary>The model now in force.</summary>
    public static MagneticCoefficients Wmm2025 => Wmm2025Loaded.Value;

    /// <summary>The model before it.</summary>
    public static MagneticCoefficients Wmm2020 => Wmm2020Loaded.Value;

    /// <summary>Name of the model, as printed.</summary>
    public string Name { get; }

    /// <summary>Date of the main field [decimal year].</summary>
    public double EpochYear { get; }

    /// <summary>Numerator of the field-dependent part of the declination error [deg nT].</summary>
    public double SigmaTermNT { get; }

    /// <summary>Highest degree of the expansion.</summary>
    public int Degree { get; }

    /// <summary>Reads a model from a table with the columns n, m, g, h, gdot, hdot [nT, nT per year].</summary>
    /// <param name="name">Name to print.</param>
    /// <param name="epochYear">Date of the main field [decimal year].</param>
    /// <param name="sigmaTermNT">Numerator of the declination error model [deg nT].</param>
    /// <param name="csv">The table as text.</param>
    /// <returns>The model.</returns>
    public static MagneticCoefficients FromCsv(string name, double epochYear, double sigmaTermNT, string csv) =>
        Of(name, epochYear, sigmaTermNT, CsvText.Rows(csv));

    internal double G(int n, int m, double years) => _g[Index(n, m)] + years * _gDot[Index(n, m)];

    internal double H(int n, int m, double years) => _h[Index(n, m)] + years * _hDot[Index(n, m)];

    internal double GDot(int n, int m) => _gDot[Index(n, m)];

    internal double HDot(int n, int m) => _hDot[Index(n, m)];

    private static int Index(int n, int m) => n * (n + 1) / 2 + m;

    private static MagneticCoefficients Of(string name, double epoch, double sigmaTerm, IReadOnlyList<IReadOnlyDictionary<string,
        string>> rows)
    {
        var model = new MagneticCoefficients(name, epoch, sigmaTerm, rows.Max(r => CsvNumber.Whole(r["n"])));
        foreach (var row in rows)
        {
            var i = Index(CsvNumber.Whole(row["n"]), CsvNumber.Whole(row["m"]));
            model._g[i] = CsvNumber.Of(row["g"]);
            model._h[i] = CsvNumber.Of(row["h"]);
            model._gDot[i] = CsvNumber.Of(row["gdot"]);
            model._hDot[i] = CsvNumber.Of(row["hdot"]);
        }
        return model;
    }
}
