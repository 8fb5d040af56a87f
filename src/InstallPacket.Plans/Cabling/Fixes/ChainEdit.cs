namespace InstallPacket.Plans.Cabling.Fixes;

/// <summary>Changes a chain for a trial. Each change leaves the tree whole: what was fed stays fed.</summary>
internal static class ChainEdit
{
    /// <summary>Puts a part right behind an element that has one output.</summary>
    public static Job InsertBehind(Job job, Element e, string id, ChainPart part)
    {
        var added = new Element(id, part, e.Point, e.Id, 1, null, null, null, e.FlyLead, e.At);
        return With(job, [.. job.Cabling.Chain.Select(c => c.From == e.Id ? c with { From = id, FromPort = 1 } : c), added]);
    }

    /// <summary>Puts a part right in front of an element; it takes over the run that comes there.</summary>
    public static Job InsertBefore(Job job, Element e, string id, ChainPart part)
    {
        var added = new Element(id, part, e.Point, e.From, e.FromPort, e.Run, null, null, e.FlyLead, e.At);
        return With(job, [.. job.Cabling.Chain.Select(c => c.Id == e.Id ? c with { From = id, FromPort = 1, Run = null } : c), added]);
    }

    /// <summary>Exchanges the part of an element.</summary>
    public static Job Exchange(Job job, Element e, ChainPart part, Calc.Quantities.Gain? setting = null) =>
        With(job, [.. job.Cabling.Chain.Select(c => c.Id == e.Id ? c with { Part = part, Setting = setting } : c)]);

    /// <summary>Takes an element out; null where that would leave two runs without a joint.</summary>
    public static Job? Remove(Job job, Element e)
    {
        var fed = job.Cabling.Chain.Where(c => c.From == e.Id).ToArray();
        if (e.From is null || fed.Length != 1 || (e.Run is not null && fed[0].Run is not null)) return null;
        return With(job,
            [.. job.Cabling.Chain.Where(c => c.Id != e.Id).Select(c => c.From == e.Id
            ? c with { From = e.From, FromPort = e.FromPort, Run = c.Run ?? e.Run } : c)]);
    }

    private static Job With(Job job, Element[] chain) => job with { Cabling = job.Cabling with { Chain = chain } };
}
