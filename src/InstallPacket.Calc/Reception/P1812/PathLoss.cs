namespace InstallPacket.Calc.Reception.P1812;

/// <summary>The loss of a path for one channel and one share of time, with everything it was made of.</summary>
/// <param name="Sight">Over a free path.</param>
/// <param name="Diffraction">By diffraction.</param>
/// <param name="Ducting">Along ducts and by layers.</param>
/// <param name="ScatterDb">By scatter in the air, Lbs [dB].</param>
/// <param name="Blend">The mechanisms put together.</param>
/// <param name="LocationDb">For the wanted share of places, Lloc [dB].</param>
/// <param name="LossDb">Basic transmission loss not exceeded, Lb [dB].</param>
/// <param name="FieldDbuVm">Field strength for 1 kW effective radiated power on a dipole, E [dB(uV/m)].</param>
/// <param name="ScatterIsSuspect">True on a path below 5 km where scatter is the least loss: the method's formula reaches beyond its sense
/// there.</param>
public readonly record struct PathLoss(
    LineOfSightLoss Sight, DiffractionLoss Diffraction, DuctingLoss Ducting, double ScatterDb, BlendedLoss Blend, double LocationDb,
        double LossDb, double FieldDbuVm, bool ScatterIsSuspect);
