namespace InstallPacket.Plans.Changes;

/// <summary>One comparable fact of a plan: what it is about, which quantity, and its value as a number or as words.</summary>
/// <param name="Subject">By meaning: a run by its name, a channel by its station and outlet.</param>
/// <param name="Name">Which quantity.</param>
/// <param name="Number">The number, or null for words.</param>
/// <param name="Text">The words; empty for a number.</param>
/// <param name="Unit">Unit of the number.</param>
/// <param name="Decimals">Decimals printed; a difference that rounds to zero is none.</param>
public sealed record PlanQuantity(string Subject, string Name, double? Number, string Text, string Unit, int Decimals);
