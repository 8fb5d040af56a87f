using System.Globalization;
using InstallPacket.Calc.Cabling;
using InstallPacket.Calc.Reception;
using InstallPacket.Calc.Sources;
using InstallPacket.Calc.Tests.Checks;

namespace InstallPacket.Calc.Tests.Cabling;

public static class ChainSets
{
    // Exact to more digits than the reference prints; rounded to 6 MHz at 290 K.
    private static readonly double Noise6MHz = ThermalNoise.Dbm(6, 290);

    public static IReadOnlyList<ReferenceSet> All { get; } =
    [
        new()
        {
            Name = "Noise of chains with and without a preamplifier", File = "cabling/friis_cascade_checks.csv", Source = "s50-noise-post", Worth = Worth.Derived,
            Tolerance = "half a unit of the last printed digit", Formulas = ["noise-cascade", "carrier-to-noise"], Rows = 34, Comparisons = 34 * 6, Check = Cascade,
        },
        new()
        {
            Name = "Level plan at three cable temperatures", File = "cabling/level_plan_checks.csv", Source = "s50-noise-post", Worth = Worth.Derived,
            Tolerance = "0.0002 dB: the gains of the reference are printed to 0.0001 and up to nine of them add", Formulas = ["noise-cascade", "carrier-to-noise"],
            Rows = 54, Comparisons = 54 * 3, Check = LevelPlan,
        },
        new()
        {
            Name = "Noise of passive parts", File = "cabling/noise_basic_checks.csv", Source = "s50-noise-post", Worth = Worth.Derived,
            Tolerance = "half a unit of the last printed digit; 3.01 dB stands for 10 log10 2", Formulas = ["passive-noise-figure", "thermal-noise"], Rows = 19, Comparisons = 19, Check = Passive,
        },
        new()
        {
            Name = "Chain under a warm sky", File = "cabling/noise_temperature_checks.csv", Source = "s50-noise-post", Worth = Worth.Derived,
            Tolerance = "0.001 dB: the reference prints the noise figure to 0.0001 and the result to 0.001", Formulas = ["system-noise-figure", "carrier-to-noise"], Rows = 15, Comparisons = 15, Check = WarmSky,
        },
        new()
        {
            Name = "Total power of channels", File = "cabling/total_power_checks.csv", Source = "project-notes", Worth = Worth.Derived,
            Tolerance = "half a unit of the last printed digit", Formulas = ["total-power"], Rows = 5, Comparisons = 5,
            Check = r => [r.Printed("total_dBm", DecibelSum.TotalDbm(r.Text("levels_dBm").Split(' ').Select(t => double.Parse(t, CultureInfo.InvariantCulture))), "dBm")],
        },
        new()
        {
            Name = "Overload margin", File = "cabling/amplifier_overload.csv", Source = "project-notes", Worth = Worth.Derived,
            Tolerance = "half a unit of the last printed digit", Formulas = ["amplifier-overload"], Rows = 2, Comparisons = 2,
            Check = r => [r.Printed("margin_db", AmplifierOverload.MarginDb(r.Value("input_dbm"), r.Value("gain_db"), r.Value("max_output_dbm")), "dB")],
        },
        new()
        {
            Name = "Units of level on the cable", File = "cabling/level_unit_checks.csv", Source = "project-notes", Worth = Worth.Derived,
            Tolerance = "half a unit of the last printed digit; 0.0006 dB more where the reference rounds the offset to 108.75", Formulas = ["level-dbuv"], Rows = 16, Comparisons = 32,
            Check = r =>
            [
                r.Within("dBmV", LevelUnits.DbmVFromDbm(LevelUnits.DbmFromDbuV(r.Value("dBuV_75ohm"))), 0.005, "dBmV"),
                r.Within("dBm", LevelUnits.DbmFromDbuV(r.Value("dBuV_75ohm")), 0.0056, "dBm"),
            ],
        },
        new()
        {
            Name = "Feed at constant current", File = "cabling/dc_feed_checks.csv", Source = "project-notes", Worth = Worth.Derived,
            Tolerance = "half a unit of the last printed digit", Formulas = ["dc-loop", "dc-feed"], Rows = 7, Comparisons = 14, Check = ConstantCurrent,
        },
        new()
        {
            Name = "One inserter for several amplifiers", File = "cabling/inserter_budget_check.csv", Source = "project-notes", Worth = Worth.Derived,
            Tolerance = "half a unit of the last printed digit; the branches of the three amplifiers are worked back from their voltage at 12 V",
            Formulas = ["dc-current-sum", "dc-feed", "dc-steered-port"], Rows = 5, Comparisons = 30, Check = Inserter,
        },
        new()
        {
            Name = "Drop over cable of different build", File = "cabling/loop_resistance_check.csv", Source = "project-notes", Worth = Worth.Derived,
            Tolerance = "0.06 mV: the resistance is printed to 0.001 ohm; half a unit of the last printed digit of the voltage",
            Formulas = ["dc-feed"], Rows = 16, Comparisons = 32,
            Check = r =>
            [
                r.Within("drop_mV_at_100mA", 1000 * (12 - DcFeed.ConstantCurrentV(12, 0.1, r.Value("loop_ohm"))), 0.06, "mV"),
                r.Printed("volts_left_of_12", DcFeed.ConstantCurrentV(12, 0.1, r.Value("loop_ohm")), "V"),
            ],
        },
        new()
        {
            Name = "Isolation between outlets", File = "cabling/isolation_check.csv", Source = "project-notes", Worth = Worth.Derived,
            Tolerance = "half a unit of the last printed digit", Formulas = ["outlet-isolation"], Rows = 4, Comparisons = 12, Check = Isolation,
        },
        new()
        {
            Name = "Least level at an outlet by mode", File = "cabling/outlet_minimum_by_mode.csv", Source = "project-notes", Worth = Worth.Derived,
            Tolerance = "half a unit of the last printed digit", Formulas = ["outlet-minimum-by-mode"], Rows = 10, Comparisons = 20,
            Check = r =>
            [
                r.Printed("outlet_minimum_scaled_from_EN60728_dbuv", OutletMinimum.DbuV(39, r.Value("cn_ricean_db"), 15.4), "dBuV"),
                // The ratios that the plan takes are those of the row.
                r.Printed("cn_ricean_db", OutletMinimum.Ratios(r.Text("system"), r.Text("mode"), "64QAM 2/3")?.RequiredDb ?? double.NaN, "dB"),
            ],
        },
        new()
        {
            Name = "Feed at constant power", File = "cabling/dc_feed_constant_power_checks.csv", Source = "project-notes", Worth = Worth.Derived,
            Tolerance = "half a unit of the last printed digit; no solution where the reference has none", Formulas = ["dc-feed-power"], Rows = 5, Comparisons = 5, Check = ConstantPower,
        },
        new()
        {
            Name = "Return loss", File = "cabling/return_loss_checks.csv", Source = "project-notes", Worth = Worth.Derived,
            Tolerance = "half a unit of the last printed digit", Formulas = ["vswr", "mismatch-loss"], Rows = 11, Comparisons = 33,
            Check = r =>
            [
                r.Printed("reflection_magnitude", ReturnLoss.Reflection(r.Value("return_loss_dB")), ""),
                r.Printed("VSWR", ReturnLoss.Vswr(r.Value("return_loss_dB")), ""),
                r.Printed("mismatch_loss_dB", ReturnLoss.MismatchLossDb(r.Value("return_loss_dB")), "dB"),
            ],
        },
        new()
        {
            Name = "Standing wave ratio", File = "reception/mismatch_check.csv", Source = "project-notes", Worth = Worth.Derived,
            Tolerance = "half a unit of the last printed digit (0.0001, 0.01 dB, 0.0001 dB)", Formulas = ["mismatch-loss"], Rows = 13, Comparisons = 39, Check = Vswr,
        },
        new()
        {
            Name = "Ripple between mismatches", File = "cabling/mismatch_ripple_checks.csv", Source = "project-notes", Worth = Worth.Derived,
            Tolerance = "half a unit of the last printed digit", Formulas = ["mismatch-ripple"], Rows = 10, Comparisons = 20, Check = Ripple,
        },
        new()
        {
            Name = "Taps", File = "cabling/tap_through_loss.csv", Source = "project-notes", Worth = Worth.Derived,
            Tolerance = "half a unit of the last printed digit", Formulas = ["tap-through-loss"], Rows = 11, Comparisons = 11,
            Check = r => [r.Printed("ideal_through_loss_dB", TapThroughLoss.IdealDb(r.Value("tap_value_dB")), "dB")],
        },
        new()
        {
            Name = "Splitters", File = "cabling/split_loss.csv", Source = "s07-power-divider", Worth = Worth.Published,
            Tolerance = "0.05 dB: half of the tenth that the source prints at its finest", Formulas = ["split-loss"], Rows = 5, Comparisons = 5,
            Check = r => [r.Within("loss_db", SplitLoss.IdealDb((int)r.Value("ways")), 0.05, "dB")],
        },
    ];

    private static CascadeStage Chain(ReferenceRow r, string file, Func<ReferenceRow, string> key, Func<ReferenceRow, Stage> stage)
    {
        var rows = CsvText.Rows(ReferenceFile.Text(file)).Select((c, i) => new ReferenceRow(i + 1, c)).Where(x => key(x) == key(r) && x.Number <= r.Number);
        return NoiseCascade.Friis([.. rows.Select(stage)])[^1];
    }

    private static IEnumerable<Comparison> Cascade(ReferenceRow r)
    {
        const double antennaDbm = -75;
        var s = Chain(r, "cabling/friis_cascade_checks.csv", x => x.Text("case"), x => new Stage(x.Text("element"), x.Value("gain_dB"), x.Value("noise_figure_dB")));
        yield return r.Printed("cumulative_gain_dB", s.GainDb, "dB");
        yield return r.Printed("cumulative_F", s.NoiseFactor, "");
        yield return r.Printed("cumulative_NF_dB", s.NoiseFigureDb, "dB");
        yield return r.Printed("level_out_dBm", antennaDbm + s.GainDb, "dBm");
        // The reference adds the rounded offset 108.75; the exact one is 108.7506.
        yield return r.Within("level_out_dBuV", LevelUnits.DbuVFromDbm(antennaDbm + s.GainDb), 0.0056, "dBuV");
        yield return r.Printed("C_over_N_dB_up_to_here", CarrierToNoise.Db(antennaDbm, Noise6MHz + s.NoiseFigureDb), "dB");
    }

    private static IEnumerable<Comparison> LevelPlan(ReferenceRow r)
    {
        var vhf = r.Value("f_MHz") < 300;
        var antennaDbm = vhf ? -38 : -70;
        var s = Chain(r, "cabling/level_plan_checks.csv", x => x.Text("cable_temperature_C") + "/" + x.Text("f_MHz"), x => new Stage(
            x.Text("element"), x.Value("gain_dB"), x.Text("element") switch
            {
                var e when e.StartsWith("preamplifier", StringComparison.Ordinal) => 2,
                var e when e.StartsWith("TV tuner", StringComparison.Ordinal) => vhf ? 10 : 7,
                _ => -x.Value("gain_dB"),
            }));
        yield return r.Within("level_dBm", antennaDbm + s.GainDb, 0.0002, "dBm");
        yield return r.Within("cumulative_NF_dB", s.NoiseFigureDb, 0.0002, "dB");
        yield return r.Within("C_over_N_dB", CarrierToNoise.Db(antennaDbm, Noise6MHz + s.NoiseFigureDb), 0.0002, "dB");
    }

    private static IEnumerable<Comparison> Passive(ReferenceRow r)
    {
        var words = r.Text("item").Split(' ');
        if (words[0] == "kTB") return [r.Printed("value", ThermalNoise.Dbm(double.Parse(words[1], CultureInfo.InvariantCulture), 290), "dBm")];
        var loss = words[1] == "3.01" ? 10 * Math.Log10(2) : double.Parse(words[1], CultureInfo.InvariantCulture);
        return [r.Printed("value", NoiseCascade.PassiveNoiseFigureDb(loss, double.Parse(words[4], CultureInfo.InvariantCulture)), "dB")];
    }

    private static IEnumerable<Comparison> WarmSky(ReferenceRow r)
    {
        var external = 10 * Math.Log10(r.Value("antenna_temperature_K") / 290);
        var system = SystemNoise.FigureDb(external, r.Value("NF_dB"));
        yield return r.Within("C_over_N_dB", CarrierToNoise.Db(-75, Noise6MHz + system), 0.001, "dB");
    }

    private static IEnumerable<Comparison> Isolation(ReferenceRow r)
    {
        var db = OutletIsolation.Db(r.Value("splitter_isolation_db"), r.Value("branch1_loss_db"), r.Value("branch2_loss_db"));
        double Meets(string column) => r.Text(column).StartsWith("meets", StringComparison.Ordinal) ? 1 : 0;
        return
        [
            r.Printed("outlet_to_outlet_db", db, "dB"), r.Expect("22 dB in one home", Meets("same_home"), db >= 22 ? 1 : 0, 0, ""),
            r.Expect("42 dB between users", Meets("different_users"), db >= 42 ? 1 : 0, 0, ""),
        ];
    }

    // The pack names the circuits in words; as numbers they stand beside it.
    private static IEnumerable<Comparison> Inserter(ReferenceRow r)
    {
        var circuit = CsvText.Rows(ReferenceFile.Text("cabling/inserter_budget_circuits.csv")).Single(c => c["case"] == r.Text("case"));
        double Number(string column) => double.Parse(circuit[column], CultureInfo.InvariantCulture);
        double[] List(string column) => [.. circuit[column].Split(' ').Select(t => double.Parse(t, CultureInfo.InvariantCulture))];
        var (supply, draws, branches) = (r.Value("supply_v"), List("draws_ma").Select(ma => ma / 1000).ToArray(), List("branches_ohm"));
        var total = DcFeed.CurrentA(draws);
        var joint = DcFeed.ConstantCurrentV(supply, total, DcFeed.LoopOhm(Number("common_ohm_per_km"), 0, Number("common_m")));
        var rated = total * 1000 <= r.Value("inserter_rating_ma");
        var printed = r.Text("volts_at_each_amplifier").Split(' ').Select(t => double.Parse(t, CultureInfo.InvariantCulture)).ToArray();
        return
        [
            r.Printed("total_ma", total * 1000, "mA"), r.Printed("volts_at_branch_point", joint, "V"), r.Printed("watts", supply * total, "W"),
            r.Expect("within the rating", r.Text("rating") == "within" ? 1 : 0, rated ? 1 : 0, 0, ""),
            .. draws.Select((ma, i) => r.Expect($"volts {i + 1}", printed[i],
                DcFeed.ConstantCurrentV(DcFeed.SteeredV(joint, (int)Number("steered_ports")), ma, branches[i]), 0.0005000001, "V")),
        ];
    }

    private static IEnumerable<Comparison> ConstantCurrent(ReferenceRow r)
    {
        var loop = DcFeed.LoopOhm(r.Value("centre_ohm_per_km"), r.Value("shield_ohm_per_km"), r.Value("length_m"));
        yield return r.Printed("loop_ohm", loop, "ohm");
        yield return r.Printed("load_V", DcFeed.ConstantCurrentV(r.Value("supply_V"), r.Value("current_A"), loop), "V");
    }

    private static IEnumerable<Comparison> ConstantPower(ReferenceRow r)
    {
        var volts = DcFeed.ConstantPowerV(r.Value("supply_V"), r.Value("load_W"), r.Value("loop_ohm"));
        if (r.Text("load_V") == "no solution") return [r.Expect("no solution", 0, volts is null ? 0 : 1, 1e-12, "")];
        return [r.Printed("load_V", volts ?? double.NaN, "V")];
    }

    private static IEnumerable<Comparison> Vswr(ReferenceRow r)
    {
        var loss = ReturnLoss.FromVswr(r.Value("vswr"));
        if (r.Text("return_loss_db") == "inf") yield return r.Expect("return_loss_db", 0, double.IsPositiveInfinity(loss) ? 0 : 1, 1e-12, "");
        else yield return r.Within("return_loss_db", loss, 0.0050001, "dB");
        yield return r.Within("gamma", ReturnLoss.Reflection(loss), 0.000050001, "");
        yield return r.Within("mismatch_loss_db", ReturnLoss.MismatchLossDb(loss), 0.000050001, "dB");
    }

    private static IEnumerable<Comparison> Ripple(ReferenceRow r)
    {
        double a = r.Value("return_loss_1_dB"), b = r.Value("return_loss_2_dB"), loss = r.Value("one_way_cable_loss_dB");
        yield return r.Printed("k", MismatchRipple.Echo(a, b, loss), "");
        yield return r.Printed("ripple_peak_to_peak_dB", MismatchRipple.PeakToPeakDb(a, b, loss), "dB");
    }
}
