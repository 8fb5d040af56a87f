using InstallPacket.Calc.Cabling;

namespace InstallPacket.Plans.Cabling;

/// <summary>One step of a chain at one frequency and temperature.</summary>
/// <param name="Label">What it is.</param>
/// <param name="Element">The element to which it leads.</param>
/// <param name="Stage">Gain and noise figure.</param>
internal sealed record ChainStep(string Label, Element Element, Stage Stage);
