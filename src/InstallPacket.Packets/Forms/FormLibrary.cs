namespace InstallPacket.Packets.Forms;

/// <summary>What the folder of jobs offers to somebody who fills in a form.</summary>
/// <param name="Firm">What the firm says already; null when there is no firm's file.</param>
/// <param name="Kits">The kits.</param>
/// <param name="Parts">The parts.</param>
/// <param name="Stations">The stations of the firm's list.</param>
public sealed record FormLibrary(FirmFile? Firm, IReadOnlyList<KitSummary> Kits, PartLibrary Parts, IReadOnlyList<Station> Stations)
{
    /// <summary>Reads what a folder offers.</summary>
    /// <param name="files">The folder of jobs.</param>
    /// <param name="firm">The firm, or null when there is none.</param>
    /// <param name="findings">Receives what is wrong in kits, parts and stations; what can be read is offered.</param>
    public static FormLibrary Read(IJobFiles files, FirmFile? firm, FindingList findings)
    {
        var stations = firm?.Of("reception.stations") is { } list
            ? StationListReader.Read(files.Read("_shared/stations/" + list, StationListReader.MostBytes), findings).Stations : [];
        return new(firm, KitSummary.All(files, findings), PartLibraryReader.Read(files, findings), stations);
    }

    /// <summary>Whether feet, inches and miles are the units of the house.</summary>
    public bool IsUs => Firm?.Of("units") is { } units ? units == Word.Of(UnitFamily.Us) : Firm?.Of("code") is null or "us";

    /// <summary>The language of the page: the firm's, or that of its code family.</summary>
    public string Language => Firm?.Of("language")
        ?? CodeDefaults.BuiltIn.FirstOrDefault(c => c.Id == Firm?.Of("code"))?.Language ?? "en-US";

    /// <summary>Kits that bring an antenna to which the rest of the chain is connected.</summary>
    internal IEnumerable<KitSummary> AntennaKits => Kits.Where(k => k.Feeds && k.Says("cabling", "chain") && Takes(k, KitHas.PlaceOnly));

    /// <summary>Kits that say how the antenna is held.</summary>
    internal IEnumerable<KitSummary> MountKits => Kits.Where(k => !k.Feeds && k.Says("mounting", "kind") && Takes(k, KitHas.PlaceOnly));

    /// <summary>Kits that need no value.</summary>
    internal IEnumerable<KitSummary> MoreKits => Kits.Where(k => !k.Feeds && !k.Says("mounting", "kind") && Takes(k, KitHas.Nothing));

    // The form gives a kit the place of the mount; a kit that needs more is for the job file.
    private static bool Takes(KitSummary kit, KitHas most) =>
        kit.Takes.Where(t => t.Needed).All(t => most == KitHas.PlaceOnly && t.Kind is ReferenceKind { Target: ReferenceTarget.Point });

    private enum KitHas
    {
        Nothing,
        PlaceOnly,
    }
}
