using InstallPacket.Calc.Sources;

namespace InstallPacket.Packets.Language;

/// <summary>
/// The words of formulas. They stand beside each formula, in English, where they are its documentation; a language says them otherwise by
/// <c>formulas.ID.title</c>, <c>formulas.ID.place</c>, <c>formulas.ID.result</c> and <c>formulas.ID.inputs.1</c> onward.
/// </summary>
internal static class FormulaWords
{
    /// <summary>The section of the words.</summary>
    public const string Section = "formulas.";

    public static string Title(Formula f) => Section + f.Id + ".title";

    public static string Place(Formula f) => Section + f.Id + ".place";

    public static string Result(Formula f) => Section + f.Id + ".result";

    public static string Input(Formula f, int index) => FormattableString.Invariant($"{Section}{f.Id}.inputs.{index + 1}");
}
