namespace InstallPacket.Plans.Reception;

/// <summary>What one propagation model says of the field at the antenna, before anything that stands near the house.</summary>
/// <param name="Model"><c>curves</c>, <c>itm</c> or <c>p1812</c>.</param>
/// <param name="MedianDbuvM">Field exceeded for half of the time.</param>
/// <param name="ServiceDbuvM">Field exceeded for 90 % of the time.</param>
/// <param name="Note">What a reader should know about this figure; empty when nothing.</param>
public sealed record FieldEstimate(string Model, double MedianDbuvM, double ServiceDbuvM, string Note)
{
    /// <summary>Field exceeded for 10 % of the time.</summary>
    public double TenthDbuvM { get; init; }

    /// <summary>What the model knew of the ground: the whole <c>path</c>, the <c>skyline</c> before the house alone, or <c>nothing</c>.</summary>
    public string Ground { get; init; } = "path";

    /// <summary>Whether the model itself warns that this path is dubious.</summary>
    public bool Dubious { get; init; }

    /// <summary>Inner results of the model that its workings name.</summary>
    public IReadOnlyList<ModelFigure> Figures { get; init; } = [];
}

/// <summary>An inner result of a model: a loss or a length.</summary>
/// <param name="Name">Which, in kebab-case.</param>
/// <param name="LossDb">The loss; null for a length.</param>
/// <param name="LengthM">The length; null for a loss.</param>
public sealed record ModelFigure(string Name, double? LossDb, double? LengthM = null);

/// <summary>How sure a predicted field is: standard deviations of its independent parts. What the field does over time is no doubt about the
/// house and stays out of the total.</summary>
/// <param name="LocationDb">Between places of the neighbourhood.</param>
/// <param name="TimeDb">Over time.</param>
/// <param name="ModelDb">Of the model, with half the difference of all that saw the ground.</param>
/// <param name="InstallDb">Of parts and work.</param>
/// <param name="TotalDb">All but the time together.</param>
public sealed record SpreadPlan(double LocationDb, double TimeDb, double ModelDb, double InstallDb, double TotalDb)
{
    /// <summary>Largest difference of the estimates that saw the ground; 0 with one of them.</summary>
    public double DifferenceDb { get; init; }

    /// <summary>Spread of the loss of the roof above the antenna; 0 outdoors.</summary>
    public double RoofDb { get; init; }
}
