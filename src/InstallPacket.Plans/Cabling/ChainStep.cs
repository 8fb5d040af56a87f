using InstallPacket.Calc.Cabling;

namespace InstallPacket.Plans.Cabling;

/// <summary>One step of a chain at one frequency and temperature.</summary>
/// <param name="Label">What it is.</param>
/// <param name="Element">The element to which it leads.</param>
/// <param name="Gain">Its gain [dB], a loss negative, with its origin.</param>
/// <param name="Noise">Its noise figure [dB], with its origin.</param>
/// <param name="Output">The output that is looked at; 0 where there is one only.</param>
internal sealed record ChainStep(Subject Label, Element Element, Term Gain, Term Noise, int Output = 0)
{
    /// <summary>Gain and noise figure.</summary>
    public Stage Stage { get; } = new(Element.Id, Gain, Noise);

    /// <summary>What the step is called in the workings: label and output.</summary>
    public Subject Name { get; } = Output > 1 ? $"{Label} output {Output}" : Label;
}
