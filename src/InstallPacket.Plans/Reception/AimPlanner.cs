using InstallPacket.Calc.Quantities;
using InstallPacket.Calc.Reception;
using InstallPacket.Calc.Siting;

namespace InstallPacket.Plans.Reception;

/// <summary>Where the antenna points: as the job says, or where most wanted stations are held; and how far it may turn.</summary>
internal sealed class AimPlanner(Job job, SitingPlan siting, AntennaView antenna, HeadingView headings, bool first, Workings work)
{
    private string AimPath => first ? "aim" : $"more_antennas[{antenna.ElementId}].aim";

    private const double ChannelsAlike = 0.02;
    private const double OneDb = 1;
    private const double MarginAlikeDb = 0.1;

    private readonly double _demanded = job.Reception.ChancePct / 100;

    public AimPlan Plan(Arrival[] arrivals)
    {
        var wanted = arrivals.Where(a => a.Wanted && a.WhyNot.Length == 0).ToArray();
        var best = Best(wanted);
        var given = antenna.Aim is { } aim ? TrueBearing.Of(aim.Value, siting.Compass) : (double?)null;
        var deg = given ?? best;
        var weakest = wanted.Length > 0 ? Weakest(wanted, deg) : null;
        var held = wanted.Where(a => Holds(a, deg)).ToArray();
        return new AimPlan(deg, Magnetic("aim", "true_deg", deg), CompassBearing.SixteenPoint(deg), given is null ? "program" : "job",
            siting.Landmark is { } l ? Bearing.Turn(l.BearingTrueDeg, deg) : null,
                antenna.BeamwidthDeg(wanted.Length == 0 ? 600 : wanted.Max(a => a.Channel.CentreMHz)))
        {
            BestDeg = best,
            Weakest = weakest,
            Held = [.. held.Select(a => a.Station.Id)],
            NotHeld = [.. wanted.Except(held).Select(a => a.Station.Id)],
            Arc = held.Length == 0 ? null : Arc(wanted, held, deg),
            Second = Second([.. wanted.Where(a => !Holds(a, best))]),
        };
    }

    // Whole degrees are finer than anybody can aim. Most channels held come first, then most channels to be expected, then the weakest one.
    // What differs by less than a fiftieth of a channel or a tenth of a decibel is nothing to aim for: among such headings the one with
    // the strongest signals wins. Among equals the first one clockwise from north wins, so that the choice repeats.
    private double Best(Arrival[] wanted)
    {
        if (wanted.Length == 0) return 0;
        var tried = Enumerable.Range(0, 360).Select(deg => Tried(wanted, deg)).ToArray();
        tried = [.. tried.Where(t => t.Held == tried.Max(o => o.Held))];
        tried = [.. tried.Where(t => t.Expected >= tried.Max(o => o.Expected) - ChannelsAlike)];
        tried = [.. tried.Where(t => t.WorstDb >= tried.Max(o => o.WorstDb) - MarginAlikeDb)];
        return tried.MaxBy(t => t.SignalDb).Deg;
    }

    private (int Deg, int Held, double Expected, double WorstDb, double SignalDb) Tried(Arrival[] wanted, int deg)
    {
        var each = wanted.Select(a => headings.At(a, deg)).ToArray();
        return (deg, each.Count(t => t.Chance >= _demanded), each.Sum(t => t.Chance), each.Min(t => t.MarginDb),
            Math.Round(each.Sum(t => t.SignalDbm), 6));
    }

    private WeakestAtAim Weakest(Arrival[] wanted, double deg)
    {
        var weakest = wanted.MinBy(a => headings.At(a, deg).MarginDb)!;
        var at = headings.At(weakest, deg);
        Subject subject = $"aim {UnitText.Number(deg, 0)} deg, weakest wanted: {weakest.Station.Id}";
        Term Of(string key, double dbm) => Term.Plan($"reception.{AimPath}.weakest.{key}", dbm);
        work.Apply(ReceptionFormulas.AimExcess, subject, Of("signal_dbm", at.SignalDbm), Of("noise_dbm", at.NoiseDbm),
            weakest.RequiredCnDb);
        return new(weakest.Station.Id, at.SignalDbm, at.NoiseDbm);
    }

    private bool Holds(Arrival a, double deg) => headings.At(a, deg).Chance >= _demanded;

    private AimArc Arc(Arrival[] wanted, Arrival[] held, double deg)
    {
        // A station that is received without the demanded chance must not fall silent either.
        var received = wanted.Where(a => headings.At(a, deg).MarginDb >= 0).ToArray();
        bool All(double heading) => held.All(a => Holds(a, heading)) && received.All(a => headings.At(a, heading).MarginDb >= 0);
        var (left, right) = Reach(deg, All);
        bool Here(double heading) => All(heading) && received.All(a => Change(a, heading) > -OneDb);
        var (hereLeft, hereRight) = Reach(deg, Here);
        var (from, to) = (Bearing.Wrap(deg - left), Bearing.Wrap(deg + right));
        var full = left + right >= 359;
        double Change(Arrival a, double heading) => headings.At(a, heading).MarginDb - headings.At(a, deg).MarginDb;
        return new AimArc(from, to, Magnetic("arc, one end", "arc.from_deg", from), Magnetic("arc, other end", "arc.to_deg", to), full
            ? 360 : left + right,
            [.. wanted.Select(a =>
                new AimEnd(a.Station.Id, a.Station.Name, headings.At(a, deg).MarginDb, Change(a, from), Change(a, to)))])
        {
            HereFromDeg = Bearing.Wrap(deg - hereLeft), HereToDeg = Bearing.Wrap(deg + hereRight),
        };
    }

    private static (int Left, int Right) Reach(double deg, Func<double, bool> keeps)
    {
        var (left, right) = (0, 0);
        while (left < 359 && keeps(deg - left - 1)) left++;
        while (left + right < 359 && keeps(deg + right + 1)) right++;
        return (left, right);
    }

    private SecondAim? Second(Arrival[] missing)
    {
        if (missing.Length == 0) return null;
        var deg = Best(missing);
        string[] added = [.. missing.Where(a => Holds(a, deg)).Select(a => a.Station.Id)];
        return added.Length == 0 ? null : new(deg, Magnetic("second aim", "second.true_deg", deg), added);
    }

    private double? Magnetic(Subject subject, string key, double deg) => siting.Compass is { Usable: true, DeclinationDeg: { } d }
        ? work.Apply(CompassBearing.MagneticFormula, AimPath == "aim" ? subject : $"{subject} of {antenna.ElementId}",
            Term.Plan($"reception.{AimPath}.{key}", deg),
            Term.Plan("siting.compass.declination_deg", d)).Number : null;
}
