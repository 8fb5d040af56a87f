namespace InstallPacket.Cli.Commands;

/// <summary>What <c>stations</c> is told, as the user wrote it.</summary>
internal sealed record StationsOptions(string File, string Jobs)
{
    public string? Near { get; init; }

    public string? At { get; init; }

    public string? Within { get; init; }

    public IReadOnlyList<string> Status { get; init; } = [];

    public string? Channels { get; init; }

    public string? Save { get; init; }

    public bool Replace { get; init; }

    /// <summary>The filter, or what is wrong with the options.</summary>
    public (StationFilter? Filter, string Problem) Filter()
    {
        var filter = new StationFilter();
        if (Near is not null && At is not null) return Wrong("`--near` and `--at` both name a place; give one of them");
        if (Within is not null && Near is null && At is null) return Wrong("`--within` counts from a place: give `--near JOB` or `--at`");
        if (Replace && Save is null) return Wrong("`--replace` goes with `--save`");
        if (At is not null && (filter = filter with { From = StationFilter.ReadPlace(At) }).From is null)
            return Wrong($"`--at {At}` is not a place; write for example `--at \"43.62 N, 99.14 W\"`");
        if (Near is not null && (filter = filter with { From = Place(Near) }).From is null)
            return Wrong($"the job {Near} in {Jobs} cannot be read; `installpacket check {Near}` says why, and `--at` names the place without a job");
        if (Within is not null && (filter = filter with { WithinM = StationFilter.ReadDistanceM(Within) }).WithinM is null)
            return Wrong($"`--within {Within}` is not a distance; write for example `--within \"150 km\"`");
        if (Channels is not null && (filter = filter with { Channels = StationFilter.ReadChannels(Channels) }).Channels is null)
            return Wrong($"`--channels {Channels}` is not a range of channels; write for example `--channels 2-36`");
        var statuses = StationFilter.ReadStatuses(Status);
        return (statuses.Count == 0 ? filter : filter with { Statuses = statuses }, "");
    }

    private (double LatitudeDeg, double LongitudeDeg)? Place(string jobId)
    {
        var files = new FolderJobFiles(Jobs, InstalledData.Jobs);
        var siting = new JobReader(files, PartLibraryReader.Read(files, new FindingList())).Read(jobId).Job?.Siting;
        return siting is null ? null : (siting.LatitudeDeg.Value, siting.LongitudeDeg.Value);
    }

    private static (StationFilter?, string) Wrong(string problem) => (null, problem);
}
