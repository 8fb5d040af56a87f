using System.Globalization;
using System.Runtime.CompilerServices;

namespace InstallPacket.Calc.Quantities;

/// <summary>Refuses what lies outside the method's validity, so that no number leaves it unnoticed.</summary>
internal static class Limit
{
    /// <summary>Throws unless the value lies between the limits, both included. Not a number is refused too.</summary>
    public static double Within(double value, double least, double most, string what,
        [CallerArgumentExpression(nameof(value))] string? name = null) =>
        value >= least && value <= most ? value
            : throw Refusal(value, string.Create(CultureInfo.InvariantCulture, $"{least} to {most}"), what, name);

    /// <summary>Throws unless the value is finite and not below the limit.</summary>
    public static double AtLeast(double value, double least, string what, [CallerArgumentExpression(nameof(value))] string? name = null) =>
        value >= least && double.IsFinite(value) ? value
            : throw Refusal(value, string.Create(CultureInfo.InvariantCulture, $"{least} and more"), what, name);

    /// <summary>Throws unless the value lies between the limits, neither included.</summary>
    public static double Between(double value, double above, double below, string what,
        [CallerArgumentExpression(nameof(value))] string? name = null) =>
        value > above && value < below
            ? value
            : throw Refusal(value, string.Create(CultureInfo.InvariantCulture, $"above {above} and below {below}"), what, name);

    private static ArgumentOutOfRangeException Refusal(double value, string limits, string what, string? name) =>
        new(name, value, string.Create(CultureInfo.InvariantCulture, $"The {what} is {value}; the method holds for {limits}."));
}
