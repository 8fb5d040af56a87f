namespace InstallPacket.Plans;

/// <summary>What to buy and cut.</summary>
/// <param name="Pieces">Pieces of cable, numbered as on the sketch.</param>
/// <param name="Items">Parts and fixings.</param>
/// <param name="Figures">How the figures of those parts are known.</param>
public sealed record MaterialsPlan(IReadOnlyList<PiecePlan> Pieces, IReadOnlyList<ItemPlan> Items, IReadOnlyList<PartFigure> Figures);

/// <summary>A figure of a part that the plan used, and how it is known.</summary>
public sealed record PartFigure(string Part, string Name, string Figure, string Provenance);

/// <summary>A piece of cable.</summary>
public sealed record PiecePlan(int Number, string Run, string Cable, string CableName, double LengthM, string From, string To);

/// <summary>A line of the parts list.</summary>
/// <param name="Part">Part name.</param>
/// <param name="Name">What to ask for.</param>
/// <param name="Kind">What it is.</param>
/// <param name="Count">Pieces; null when bought by length.</param>
/// <param name="LengthM">Length; null when bought by the piece.</param>
/// <param name="For">What it is for.</param>
public sealed record ItemPlan(string Part, string Name, string Kind, int? Count, double? LengthM, string For);
