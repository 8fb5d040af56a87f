namespace InstallPacket.Plans.Work;

/// <summary>The figures of parts, as terms of the workings.</summary>
internal static class PartTerms
{
    /// <summary>A figure of a part.</summary>
    /// <param name="part">The part.</param>
    /// <param name="key">The key that states it.</param>
    /// <param name="number">Its value in the unit that the formula asks for; of a figure over frequency, that at the frequency in
    /// question.</param>
    public static Given Figure(this Part part, Key key, double number) => Term.Part(part.Id, key.Name, number);
}
