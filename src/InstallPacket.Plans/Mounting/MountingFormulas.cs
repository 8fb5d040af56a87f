using InstallPacket.Calc.Sources;

namespace InstallPacket.Plans.Mounting;

/// <summary>The sums by which the planners of the mount join published equations.</summary>
public static class MountingFormulas
{
    private const string Own = "project-notes";

    /// <summary>Weight on the mount.</summary>
    public static readonly Formula Weight = new(
        "mount-weight", "Weight of antenna, mast and mount", "V = (ma + mm + mb) g", new("V", "N", "weight"),
        [new("ma", "kg", "antennas"), new("mm", "kg", "mast"), new("mb", "kg", "bracket or base")], Own, "sum of weights",
            Provenance.Derived)
    {
        Method = v => (v[0] + v[1] + v[2]) * Calc.Mounting.StandardGravity.MS2,
    };

    /// <summary>Moment at the feet.</summary>
    public static readonly Formula FootMoment = new(
        "mount-foot-moment", "Moment of the wind at the feet of the mount", "M = F L + w L^2 / 2", new("M", "N m", "moment"),
        [new("F", "N", "force on the antennas"), new("L", "m", "length of the mast above the feet"),
            new("w", "N/m", "line load of the mast")], Own, "balance of moments, antennas at the top", Provenance.Derived)
    {
        Method = v => v[0] * v[1] + v[2] * v[1] * v[1] / 2,
    };

    /// <summary>Pull of a fixing, wind away from the wall.</summary>
    public static readonly Formula PullAway = new(
        "fixing-pull-away", "Pull of one fixing, wind away from the wall", "N = R / n + T / n", new("N", "N", "pull"),
        [new("R", "N", "force of the upper bracket"), new("T", "N", "pull from the weight on its stand-off"),
            new("n", "", "fixings of the bracket")], Own, "sum of shares", Provenance.Derived)
    {
        Method = v => v[0] / v[2] + v[1] / v[2],
    };

    /// <summary>Pull of a fixing, wind along the wall.</summary>
    public static readonly Formula PullAlong = new(
        "fixing-pull-along", "Pull of one fixing, wind along the wall", "N = T / nu + Tw / n", new("N", "N", "pull"),
        [new("T", "N", "pull of the couple, all upwind fixings together"), new("nu", "", "fixings that share it"),
            new("Tw", "N", "pull from the weight on its stand-off"), new("n", "", "fixings of the bracket")],
        Own, "sum of shares", Provenance.Derived)
    {
        Method = v => v[0] / v[1] + v[2] / v[3],
    };

    /// <summary>Shear of a fixing.</summary>
    public static readonly Formula Shear = new(
        "fixing-shear", "Shear of one fixing", "V = sqrt(Rs^2 + W^2) / n", new("V", "N", "shear"),
        [new("Rs", "N", "wind force of the bracket along the wall"), new("W", "N", "weight that the bracket carries"),
            new("n", "", "fixings of the bracket")], Own, "both directions at right angles", Provenance.Derived)
    {
        Method = v => Math.Sqrt(v[0] * v[0] + v[1] * v[1]) / v[2],
    };

    /// <summary>Force of the guys.</summary>
    public static readonly Formula GuyPull = new(
        "guy-pull", "Largest pull of a guy, still air included", "T = Tw + T0", new("T", "N", "pull"),
            [new("Tw", "N", "from the wind"), new("T0", "N", "in still air")],
        Own, "sum, on the safe side", Provenance.Derived)
    {
        Method = v => v[0] + v[1],
    };

    /// <summary>Wire that goes around the thimbles at both ends of a guy [m] (memory: three clips an end).</summary>
    public static readonly Constant GuyEndsM = new("ends-of-a-guy", 0.8, Own, Provenance.Memory);

    /// <summary>Length of a guy to cut.</summary>
    public static readonly Formula GuyCut = new(
        "guy-cut-length", "Length of a guy to cut", "l = s + e", new("l", "m", "length"),
            [new("s", "m", "from ring to anchor, straight"),
            new("e", "m", "around both thimbles and through three clips each, recalled; the turnbuckle takes up the rest")],
        Own, "sum; the allowance is recalled", Provenance.Memory)
    {
        Method = v => v[0] + v[1],
    };

    /// <summary>Angle of a guy.</summary>
    public static readonly Formula GuyAngle = new(
        "guy-angle", "Angle between guy and mast", "phi = atan(r / h)", new("phi", "deg", "angle"),
            [new("r", "m", "distance of the anchor"), new("h", "m", "height of the ring above it")],
        Own, "right triangle, level ground", Provenance.Derived)
    {
        Method = v => Math.Atan2(v[0], v[1]) * 180 / Math.PI,
    };

    /// <summary>Push down the mast.</summary>
    public static readonly Formula ColumnPush = new(
        "mast-column-push", "Push down the guyed mast", "P = sum(Pg + n T0 cos phi) + V", new("P", "N", "push"),
        [new("Pg", "N", "from the wind, all rings"), new("Pp", "N", "from the pull in still air"),
            new("V", "N", "weight of antenna and mast")], Own, "sum", Provenance.Derived)
    {
        Method = v => v[0] + v[1] + v[2],
    };

    /// <summary>Bending and push together.</summary>
    public static readonly Formula ColumnUse = new(
        "mast-column-use", "Bending and push of the guyed mast together", "u = M / Ma + P / Pa", new("u", "", "demand over capacity"),
        [new("M/Ma", "", "share of bending"), new("P/Pa", "", "share of the push")], Own, "straight line between both, on the safe side",
            Provenance.Derived)
    {
        Method = v => v[0] + v[1],
    };

    /// <summary>Weight that counts.</summary>
    public static readonly Formula BallastNeed = new(
        "ballast-need", "Weight that the base needs", "D = max(Dt, Ds) / g", new("D", "N", "weight"),
        [new("Dt", "N", "against overturning"), new("Ds", "N", "against sliding"),
            new("g", "", "share of the weight that counts: 1 against the ultimate wind of ASCE 7, 0.9 in Europe (recalled)")],
        Own, "the larger of both", Provenance.Memory)
    {
        Method = v => Math.Max(v[0], v[1]) / v[2],
    };

    /// <summary>Share of a capacity.</summary>
    public static readonly Formula Use = new(
        "capacity-use", "Demand over capacity", "u = E / R", new("u", "", "above 1 it fails"),
            [new("E", "N", "demand"), new("R", "N", "capacity")], Own, "comparison", Provenance.Derived)
    {
        Method = v => v[1] > 0 ? v[0] / v[1] : double.PositiveInfinity,
    };

    /// <summary>Share of a stress.</summary>
    public static readonly Formula StressUse = new(
        "stress-use", "Stress over what is borne", "u = p / pR", new("u", "", "above 1 it fails"),
            [new("p", "Pa", "stress"), new("pR", "Pa", "borne")], Own, "comparison", Provenance.Derived)
    {
        Method = v => v[0] / v[1],
    };

    /// <summary>End distance.</summary>
    public static readonly Formula EndDistance = new(
        "screw-end-distance", "Distance from screw to the end of the timber, for the full value", "e = 7 D, half of it at least",
            new("e", "m", "distance"), [new("D", "m", "diameter")],
        "nds-chapter-12", "softwood, load along the grain toward the end: the worst case is taken", Provenance.Read)
    {
        Method = v => 7 * v[0],
    };

    /// <summary>End and edge distance in Europe.</summary>
    public static readonly Formula EuropeanDistance = new(
        "ec5-screw-distance", "Distance from screw to the end or the edge of the timber", "e = n d", new("e", "m", "distance"),
            [new("n", "", "7 at the end, 4 at a loaded edge"), new("d", "m", "diameter")],
        "en-1995-1-1", "screws as bolts, recalled", Provenance.Memory)
    {
        Method = v => v[0] * v[1],
    };

    /// <summary>Edge distance.</summary>
    public static readonly Formula EdgeDistance = new(
        "screw-edge-distance", "Distance from screw to the edge of the timber", "e = 4 D at the loaded edge, 1.5 D at least",
            new("e", "m", "distance"), [new("D", "m", "diameter")],
        "nds-chapter-12", "edges, recalled", Provenance.Memory)
    {
        Method = v => 4 * v[0],
    };

    /// <summary>Lead hole in Europe.</summary>
    public static readonly Formula EuropeanLeadHole = new(
        "ec5-lead-hole", "Lead hole for the thread of a wood screw", "dl = 0.7 d", new("dl", "mm", "drill"), [new("d", "mm", "diameter")],
            "en-1995-1-1", "about seven tenths, recalled", Provenance.Memory)
    {
        Method = v => 0.7 * v[0],
    };

    /// <summary>Stack of a chimney.</summary>
    public static readonly Formula StackWeight = new(
        "chimney-weight-stress", "Press of the stack's own weight at its foot", "p = rho g h", new("p", "Pa", "stress"),
            [new("rho", "kg/m3", "density of masonry"), new("h", "m", "height of the stack")],
        Own, "weight over area", Provenance.Derived)
    {
        Method = v => v[0] * Calc.Mounting.StandardGravity.MS2 * v[1],
    };

    /// <summary>Upper strap of a chimney.</summary>
    public static readonly Formula UpperStrap = new(
        "chimney-upper-strap", "Pull in each leg of the upper strap", "Tu = T + P / 2", new("Tu", "N", "pull per leg"),
        [new("T", "N", "from the moment"), new("P", "N", "wind on antenna and free mast, which the upper strap takes alone")], Own,
            "balance of forces, both legs share", Provenance.Derived)
    {
        Method = v => v[0] + v[1] / 2,
    };

    /// <summary>Wind load with its partial factor.</summary>
    public static readonly Formula DesignWindLoad = new(
        "design-wind-load", "Wind load for the check of strength", "Fd = gamma F", new("Fd", "N", "design load, or N/m"),
            [new("F", "N", "characteristic load, or N/m"), new("gamma", "", "partial factor on wind")],
        Own, "partial factor 1.5 of the European standards, recalled", Provenance.Memory)
    {
        Method = v => v[1] * v[0],
    };

    /// <summary>Moment that a tube bears.</summary>
    public static readonly Formula DesignResistance = new(
        "mast-design-resistance", "Moment that the tube bears, elastic", "MRd = fy S", new("MRd", "N m", "design resistance"),
            [new("fy", "MPa", "yield strength"), new("S", "mm3", "section modulus")],
        Own, "elastic resistance with a factor of 1.0 on the material, recalled", Provenance.Memory)
    {
        Method = v => v[0] * v[1] / 1000,
    };

    /// <summary>Angle of the force on a fixing.</summary>
    public static readonly Formula PullAngle = new(
        "fixing-pull-angle", "Angle of the force on a fixing to the face of the timber", "a = atan(N / V)", new("a", "deg", "angle"),
        [new("N", "N", "pull"), new("V", "N", "shear")], Own, "right triangle", Provenance.Derived) { Method = v =>
            Calc.Mounting.Wood.CombinedFixing.AngleDeg(v[0], v[1]) };

    /// <summary>Reach of a falling mast.</summary>
    public static readonly Formula FallRadius = new(
        "fall-radius", "Reach of the falling mast with its antenna", "Rf = Lm + La / 2", new("Rf", "m", "radius"),
        [new("Lm", "m", "mast"), new("La", "m", "antenna")], Own, "the antenna sits at the top by its middle",
            Provenance.Derived) { Method = v => v[0] + v[1] / 2 };

    /// <summary>Use of a moment.</summary>
    public static readonly Formula MomentUse = new(
        "moment-use", "Use of a moment that the maker states", "u = M / MR", new("u", "", "demand over capacity"),
        [new("M", "N m", "moment"), new("MR", "N m", "stated")], Own, "quotient", Provenance.Derived) { Method = v => v[0] / v[1] };

    /// <summary>Use of a wind area.</summary>
    public static readonly Formula AreaUse = new(
        "area-use", "Use of a wind area that the maker states", "u = A / AR", new("u", "", "demand over capacity"),
        [new("A", "m2", "wind area"), new("AR", "m2", "stated")], Own, "quotient", Provenance.Derived) { Method = v => v[0] / v[1] };

    /// <summary>All of them.</summary>
    public static IReadOnlyList<Formula> All =>
        [Weight, FootMoment, PullAway, PullAlong, Shear, GuyPull, GuyCut, GuyAngle, ColumnPush, ColumnUse, BallastNeed, Use, StressUse,
            EndDistance, EdgeDistance, EuropeanDistance, EuropeanLeadHole, StackWeight, UpperStrap, PullAngle, FallRadius, DesignWindLoad,
            DesignResistance, MomentUse, AreaUse];
}
