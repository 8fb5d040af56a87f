namespace InstallPacket.Jobs.Layers;

/// <summary>
/// A job before anybody went there: place, stations and wish, and perhaps a chain. What the reader needs besides is taken from a usual house of the
/// code family and printed as not surveyed; of mount, bonding and route nothing is said.
/// </summary>
internal static class DeskStudy
{
    private static readonly string[] Surveyed = [JobKeys.Routing.Name, JobKeys.Mounting.Name, JobKeys.Bonding.Name];

    /// <summary>Whether a job is one: neither the job nor a kit of it says anything of route, mount or bonding.</summary>
    public static bool Is(YamlMap job) => TreeEditor.Below(job, JobKeys.Siting.Name) is not null
        && TreeEditor.Below(job, JobKeys.Reception.Name) is not null && Surveyed.All(s => TreeEditor.Below(job, s) is null);

    /// <summary>The job with what a usual house has.</summary>
    /// <param name="job">The job with what the firm says.</param>
    /// <param name="family">The code family.</param>
    public static YamlMap Filled(YamlMap job, string family)
    {
        if (LayerFile.Read($"desk-study-{family}.yaml") is not { } usual) return job;
        // A chain is taken whole: half of one of ours would be fed by nothing.
        var tree = new TreeEditor(Placed(usual, job.At));
        if (TreeEditor.Below(TreeEditor.Below(job, JobKeys.Cabling.Name), CablingKeys.Chain.Name) is not null)
            tree.Remove(JobKeys.Cabling.Name, CablingKeys.Chain.Name);
        // What the firm says of mounts in general is not what stands here.
        var said = job with { Entries = [.. job.Entries.Where(e => !Surveyed.Contains(e.Key.Value))] };
        return TreeMerge.Over(said, tree.Root);
    }

    private static YamlMap Placed(YamlMap map, SourceSpan at) => map with
    {
        At = at, Named = at,
        Entries = [.. map.Entries.Select(e => new KeyValuePair<YamlScalar, YamlNode>(e.Key with { At = at }, Placed(e.Value, at)))],
    };

    private static YamlNode Placed(YamlNode node, SourceSpan at) => node switch
    {
        YamlMap map => Placed(map, at),
        YamlList list => list with { At = at, Items = [.. list.Items.Select(i => Placed(i, at))] },
        _ => node with { At = at },
    };
}
