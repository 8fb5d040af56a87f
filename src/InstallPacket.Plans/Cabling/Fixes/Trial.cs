namespace InstallPacket.Plans.Cabling.Fixes;

/// <summary>A job with one thing changed.</summary>
/// <param name="Change">What is changed.</param>
/// <param name="Job">The job after it.</param>
/// <param name="Adds">Parts that it adds.</param>
/// <param name="Reception">What arrives then, where the change moves the antenna; null where it does not.</param>
internal sealed record Trial(Change Change, Job Job, IReadOnlyList<Part> Adds, ReceptionPlan? Reception = null)
{
    /// <summary>What the added parts cost; null when one of them has no price or is bought by length, or when the mast changes.</summary>
    public double? Cost => Change.RaiseM is null && Adds.All(a => a is { Price: not null, ByLength: false }) ? Adds.Sum(a => a.Price!.Value) : null;
}
