namespace InstallPacket.Plans.Mounting;

/// <summary>Size of a screw and of the plate that it goes through.</summary>
/// <param name="DiameterM">Thickness [m].</param>
/// <param name="LengthM">Length under the head [m].</param>
/// <param name="PlateM">Thickness of the plate [m].</param>
internal sealed record ScrewShape(double DiameterM, double LengthM, double PlateM)
{
    private const double LongestM = 0.5;

    /// <summary>The shape; null after the ledger was told what is missing.</summary>
    public static ScrewShape? Of(ScrewCase screw, LoadPathLedger ledger)
    {
        var (f, mount) = (screw.Fixing, screw.Job.Mounting.Mount);
        if (f.Part.DiameterM is not { } diameter) return Missing(f, ledger, "diameter");
        if (f.Part.LengthM is not { } length) return Missing(f, ledger, "length");
        if (mount.PlateM is not { } plate)
        {
            ledger.Unknown("the fixing " + f.Part.Name, "plate", mount.At, ("mount", mount.Id));
            return null;
        }
        if (length <= LongestM) return new(diameter, length, plate);
        ledger.Unknown("the fixing " + f.Part.Name, "long", f.Part.At, ("part", f.Part.Id), ("length_m", length));
        return null;
    }

    /// <summary>Says which figure is missing.</summary>
    public static ScrewShape? Missing(Fixing f, LoadPathLedger ledger, string figure)
    {
        ledger.Unknown("the fixing " + f.Part.Name, "figure", f.Part.At, ("part", f.Part.Id), ("figure", figure));
        return null;
    }

    /// <summary>A number of a screw in the plan.</summary>
    public static Given Of(string name, string key, double number) => MountTerms.LoadPath($"screws[{name}].{key}", number);
}
