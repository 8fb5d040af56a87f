namespace InstallPacket.Plans.Mounting;

/// <summary>Size of a screw and of the plate that it goes through.</summary>
/// <param name="DiameterM">Thickness [m].</param>
/// <param name="LengthM">Length under the head [m].</param>
/// <param name="PlateM">Thickness of the plate [m].</param>
internal sealed record ScrewShape(double DiameterM, double LengthM, double PlateM)
{
    private const double LongestM = 0.5;

    /// <summary>The shape; null after the ledger was told what is missing.</summary>
    public static ScrewShape? Of(ScrewCase screw, HoldLedger ledger)
    {
        var (f, mount) = (screw.Fixing, screw.Job.Mounting.Mount);
        if (f.Part.DiameterM is not { } diameter) return Missing(f, ledger, "diameter");
        if (f.Part.LengthM is not { } length) return Missing(f, ledger, "length");
        if (mount.PlateM is not { } plate)
        {
            ledger.Unknown("the fixing " + f.Part.Name, mount.At, $"the mount `{mount.Id}` does not state `plate`", "add the thickness of its plate from the maker's sheet");
            return null;
        }
        if (length <= LongestM) return new(diameter, length, plate);
        ledger.Unknown("the fixing " + f.Part.Name, f.Part.At, $"`{f.Part.Id}` is {UnitPrinter.Of(screw.Job).Length(length)} long", "the rules hold for screws: correct `length`");
        return null;
    }

    /// <summary>Says which figure is missing.</summary>
    public static ScrewShape? Missing(Fixing f, HoldLedger ledger, string figure)
    {
        ledger.Unknown("the fixing " + f.Part.Name, f.At, $"the fixing `{f.Part.Id}` does not state `{figure}`", $"add `{figure}` to the part");
        return null;
    }

    /// <summary>A number of a screw in the plan.</summary>
    public static Given Of(string name, string key, double number) => MountTerms.Hold($"screws[{name}].{key}", number);
}
