namespace InstallPacket.Calc.Sources;

/// <summary>A document that a formula, a table or a rule comes from.</summary>
/// <param name="Id">Identifier used by formulas.</param>
/// <param name="Title">Title of the document.</param>
/// <param name="Publisher">Who published it.</param>
/// <param name="Edition">Edition or date.</param>
/// <param name="UsedFor">What this project takes from it.</param>
public sealed record Source(string Id, string Title, string Publisher, string Edition, string UsedFor);
