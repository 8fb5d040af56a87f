namespace InstallPacket.Plans.Codes;

/// <summary>What a code family says of screws in timber.</summary>
internal interface IScrewCode
{
    /// <summary>Whether a word for timber belongs to the family.</summary>
    bool Knows(string timber);

    /// <summary>One such word, for a finding.</summary>
    string TimberExample { get; }

    /// <summary>Where capacity and distances come from.</summary>
    FindingValues Rule { get; }

    /// <summary>Where the distance to the edge comes from.</summary>
    FindingValues EdgeRule { get; }

    /// <summary>Where the lead hole comes from.</summary>
    FindingValues LeadHoleRule { get; }

    /// <summary>Name of the timber; the weakest where nobody named it.</summary>
    string Timber(Fixing fixing);

    /// <summary>Length of the tip, which holds nothing [m].</summary>
    double TipM(Fixing fixing);

    /// <summary>Least depth in the timber in diameters; null where the capacity says so itself.</summary>
    int? LeastDepth(Fixing fixing);

    /// <summary>Smallest and largest lead hole [m].</summary>
    (double Least, double Most) LeadHole(ScrewCase screw, double diameterM);

    /// <summary>Distance to the end of the timber for the full value [m].</summary>
    double EndM(ScrewCase screw, double diameterM);

    /// <summary>Distance to a loaded edge of the timber [m].</summary>
    double EdgeM(ScrewCase screw, double diameterM);

    /// <summary>Whether the family has a rule for the capacity of such a fixing.</summary>
    bool HasRule(FixingForm form);

    /// <summary>The capacity of a screw; null after the ledger was told what is missing.</summary>
    IFixingResistance? Resistance(ScrewCase screw, LoadPathLedger ledger);
}

/// <summary>A screw in its place.</summary>
internal sealed record ScrewCase(Job Job, Fixing Fixing, Workings Work)
{
    /// <summary>What it is called in the workings.</summary>
    public string Subject => Fixing.Subject(Job);
}
