using System.Globalization;
using InstallPacket.Calc.Reception;
using InstallPacket.Calc.Sources;
using InstallPacket.Calc.Tests.Checks;

namespace InstallPacket.Calc.Tests.Reception;

public static class AntennaSets
{
    public static IReadOnlyList<ReferenceSet> All { get; } =
    [
        new()
        {
            Name = "Directivity from beamwidths", File = "reception/antenna_pattern_check.csv", Source = "project-notes", Worth = Worth.Derived,
            Tolerance = "half a unit of the last digit, 0.01 dB", Formulas = ["directivity-beamwidths", "directivity-cosine"], Rows = 8, Comparisons = 32, Check = Beam,
        },
        new()
        {
            Name = "Turned plane of polarisation", File = "reception/polarisation_check.csv", Source = "project-notes", Worth = Worth.Derived,
            Tolerance = "half a unit of the last digit, 0.001 dB", Formulas = ["polarisation-mismatch"], Rows = 10, Comparisons = 30, Check = Turned,
        },
        new()
        {
            Name = "Circular wave on a linear antenna", File = "reception/polarisation_circular.csv", Source = "project-notes", Worth = Worth.Derived,
            Tolerance = "half a unit of the last digit, 0.01 dB", Formulas = ["circular-into-linear"], Rows = 2, Comparisons = 2,
            Check = r => [r.Within("loss_db", PolarisationMismatch.CircularDb(r.Text("planes") == "1"), 0.0050001, "dB")],
        },
        new()
        {
            Name = "Stacked antennas", File = "reception/stacking_check.csv", Source = "project-notes", Worth = Worth.Derived,
            Tolerance = "half a unit of the last printed digit", Formulas = ["stacking-gain"], Rows = 6, Comparisons = 6,
            Check = r => [r.Printed("ideal_stacking_gain_db", Stacking.GainDb((int)r.Value("antennas"), r.Value("combiner_loss_per_stage_db")), "dB")],
        },
        new()
        {
            Name = "Spacing and null of stacked antennas", File = "reception/stacking_geometry.csv", Source = "project-notes", Worth = Worth.Derived,
            Tolerance = "half a unit of the last digit of the angle, 1e-5 m on the spacing, which is rounded before the angle is taken", Formulas = ["stacking-spacing", "stacking-null"], Rows = 5, Comparisons = 12, Check = Geometry,
        },
        new()
        {
            Name = "Discrimination of the planners' antenna", File = "reception/rx_antenna_discrimination_bt419.csv", Source = "itu-bt419", Worth = Worth.Recalled,
            Tolerance = "1e-9 dB at the corners and halfway between; bands I and III are recalled", Formulas = ["receiving-discrimination"], Rows = 3, Comparisons = 24, Check = Discrimination,
        },
        new()
        {
            Name = "Pattern of a directional transmitter", File = "reception/transmitter_pattern.csv", Source = "project-notes", Worth = Worth.Derived,
            Tolerance = "half a unit of the last digit, 0.0001 dB and 0.0001 kW", Formulas = ["transmitter-pattern", "power-toward-house"], Rows = 25, Comparisons = 50, Check = Transmitted,
        },
    ];

    private static IEnumerable<Comparison> Transmitted(ReferenceRow r)
    {
        static double Number(string text) => double.Parse(text, CultureInfo.InvariantCulture);
        var pattern = new TransmitterPattern(r.Text("pattern").Split(' ').Select(p => p.Split(':')).Select(p => (Number(p[0]), Number(p[1]))));
        var gain = pattern.Toward(r.Value("bearing_deg")).GainDb;
        yield return r.Printed("gain_db", gain, "dB");
        yield return r.Printed("erp_toward_kw", TransmitterPattern.PowerKw(r.Value("erp_max_kw"), gain), "kW");
    }

    private static IEnumerable<Comparison> Beam(ReferenceRow r)
    {
        double e = r.Value("hpbw_E_deg"), h = r.Value("hpbw_H_deg");
        yield return r.Within("D_41253_dbi", Directivity.FromBeamwidthsDbi(e, h, BeamRule.UpperBound), 0.0050001, "dBi");
        yield return r.Within("D_32400_dbi", Directivity.FromBeamwidthsDbi(e, h, BeamRule.Usual), 0.0050001, "dBi");
        yield return r.Within("D_26000_dbi", Directivity.FromBeamwidthsDbi(e, h, BeamRule.WithSideLobes), 0.0050001, "dBi");
        yield return r.Within("D_cosn_dbi", Directivity.OfCosineDbi(AntennaPattern.Exponent(e)), 0.0050001, "dBi");
    }

    private static IEnumerable<Comparison> Turned(ReferenceRow r)
    {
        var angle = r.Value("angle_deg");
        var ideal = PolarisationMismatch.LossDb(angle, double.PositiveInfinity);
        yield return r.Text("loss_ideal_db") == "inf"
            ? r.Expect("loss_ideal_db", 1, double.IsPositiveInfinity(ideal) ? 1 : 0, 1e-12, "")
            : r.Within("loss_ideal_db", ideal, 0.00050001, "dB");
        yield return r.Within("loss_with_20dB_xpd_db", PolarisationMismatch.LossDb(angle, 20), 0.00050001, "dB");
        yield return r.Within("loss_with_16dB_xpd_db", PolarisationMismatch.LossDb(angle, 16), 0.00050001, "dB");
    }

    private static IEnumerable<Comparison> Geometry(ReferenceRow r)
    {
        double wavelength = r.Value("wavelength_m"), spacing = r.Value("spacing_m");
        var angle = Stacking.NullDeg(wavelength, spacing);
        if (r.Text("beamwidth_deg").Length > 0) yield return r.Within("spacing_m", Stacking.SpacingM(wavelength, r.Value("beamwidth_deg")), 0.0000050001, "m");
        if (r.Text("null_deg") == "none")
        {
            yield return r.Expect("no null", 1, angle is null ? 1 : 0, 1e-12, "");
            yield break;
        }
        yield return r.Within("null_deg", angle ?? double.NaN, 0.0005, "deg");
        yield return r.Within("spacing_m", Stacking.SpacingForNullM(wavelength, r.Value("null_deg")), 0.00001, "m");
    }

    private static IEnumerable<Comparison> Discrimination(ReferenceRow r)
    {
        var limits = r.Text("band").Split('(', ' ')[^2].Split('-').Select(t => double.Parse(t, CultureInfo.InvariantCulture)).ToArray();
        var low = ReceivingDiscrimination.Find(limits[0])!;
        double flat = r.Value("flat_to_deg"), end = r.Value("reaches_floor_at_deg"), floor = r.Value("floor_db");
        yield return r.Expect("one band", 1, ReferenceEquals(low, ReceivingDiscrimination.Find(limits[1])) ? 1 : 0, 1e-12, "");
        yield return r.Expect("flat", 0, low.GainDb(flat), 1e-9, "dB");
        yield return r.Expect("halfway", floor / 2, low.GainDb(-(flat + end) / 2), 1e-9, "dB");
        yield return r.Within("floor_db", low.GainDb(end), 1e-9, "dB");
        yield return r.Within("floor_db", low.GainDb(180), 1e-9, "dB");
        yield return r.Within("orthogonal_polarisation_db", low.OrthogonalDb, 1e-9, "dB");
        yield return r.Expect("on the axis", 0, low.GainDb(720), 1e-9, "dB");
        yield return r.Expect("provenance", 1, low.Provenance == (r.Text("provenance") == "read" ? Provenance.Read : Provenance.Memory) ? 1 : 0, 1e-12, "");
    }
}
