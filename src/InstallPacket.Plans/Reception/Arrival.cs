using InstallPacket.Calc.Reception;

namespace InstallPacket.Plans.Reception;

/// <summary>A station as it arrives at the place of the antenna, before the antenna's own gain.</summary>
internal sealed record Arrival(Station Station, TvChannel Channel, bool Wanted, double DistanceKm, double BearingTrueDeg)
{
    /// <summary>Why nothing could be reckoned; empty when it could.</summary>
    public string WhyNot { get; init; } = "";

    /// <summary>Effective radiated power toward the house: what every field is reckoned with.</summary>
    public double ErpKw { get; init; } = Station.ErpKw;

    /// <summary>Gain of the transmitter's pattern toward the house; null when it has none.</summary>
    public double? PatternDb { get; init; }

    public double FreeSpaceDbuvM { get; init; }

    public IReadOnlyList<FieldVoice> Voices { get; init; } = [];

    public string PlannedBy { get; init; } = "";

    public double MedianDbuvM { get; init; }

    public double RoofLossDb { get; init; }

    public SpreadPlan Spread { get; init; } = new(0, 0, 0, 0, 0);

    public double ObstructionLossDb { get; init; }

    public string Obstruction { get; init; } = "";

    public double FieldDbuvM { get; init; }

    public double ThermalNoiseDbm { get; init; }

    public double ExternalNoiseDb { get; init; }

    public double AntennaNoiseK { get; init; }

    public double RequiredCnDb { get; init; }

    public string RequiredCnProvenance { get; init; } = "";

    public StationBudget Budget(double gainDbd, double levelDbm) => new(
        FreeSpaceDbuvM, Voices, PlannedBy, ObstructionLossDb, Obstruction, FieldDbuvM, MedianDbuvM, Spread, gainDbd, levelDbm, ThermalNoiseDbm, ExternalNoiseDb,
        RequiredCnDb, RequiredCnProvenance) { RoofLossDb = RoofLossDb, AntennaNoiseK = AntennaNoiseK, ErpKw = ErpKw, PatternDb = PatternDb };

    public StationPlan ToPlan(double offAimDeg, StationBudget? budget) => new(
        Station.Id, Station.Name, Station.Site, Wanted, budget is not null, WhyNot, Station.System, Station.Mode, Station.Channel, Station.ShowsAs,
        Station.Polarisation, Channel.CentreMHz, DistanceKm, BearingTrueDeg, offAimDeg, budget);
}
