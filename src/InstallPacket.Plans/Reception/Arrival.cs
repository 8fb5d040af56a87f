using InstallPacket.Calc.Sources;
using InstallPacket.Calc.Reception;

namespace InstallPacket.Plans.Reception;

/// <summary>A station as it arrives at the place of the antenna, before the antenna's own gain.</summary>
internal sealed record Arrival(Station Station, TvChannel Channel, bool Wanted, double DistanceKm, double BearingTrueDeg)
{
    private static readonly Term Nothing = new Constant("nothing-yet", 0, "project-notes", Provenance.Derived);

    /// <summary>Distance to the house [km].</summary>
    public Term Distance => Term.Plan($"reception.stations[{Station.Id}].distance_km", DistanceKm);

    /// <summary>Why nothing could be calculated; empty when it could.</summary>
    public string WhyNot { get; init; } = "";

    /// <summary>Effective radiated power toward the house: what every field is calculated with.</summary>
    public Term ErpKw { get; init; } = Term.Station(Station.Id, "power", Station.ErpKw);

    /// <summary>Gain of the transmitter's pattern toward the house; null when it has none.</summary>
    public double? PatternDb { get; init; }

    public Term FreeSpaceDbuvM { get; init; } = Nothing;

    public IReadOnlyList<FieldEstimate> Estimates { get; init; } = [];

    public string PlannedBy { get; init; } = "";

    public Term MedianDbuvM { get; init; } = Nothing;

    public double RoofLossDb { get; init; }

    public SpreadPlan Spread { get; init; } = new(0, 0, 0, 0, 0);

    public double ObstructionLossDb { get; init; }

    public string Obstruction { get; init; } = "";

    /// <summary>Field for the demanded share of the time.</summary>
    public Term FieldDbuvM { get; init; } = Nothing;

    /// <summary>Field exceeded for the rest of the time: as strong as it may be when it disturbs or overloads.</summary>
    public Term StrongDbuvM { get; init; } = Nothing;

    /// <summary>How the ground toward the station is known: the whole <c>path</c>, the <c>skyline</c> before the house alone, or <c>nothing</c>.</summary>
    public string Ground { get; init; } = "path";

    public Term ThermalNoiseDbm { get; init; } = Nothing;

    public Term ExternalNoiseDb { get; init; } = Nothing;

    public double AntennaNoiseK { get; init; }

    public Term RequiredCnDb { get; init; } = Nothing;

    public string RequiredCnProvenance { get; init; } = "";

    public StationBudget Budget(double gainDbd, double levelDbm) => new(
        FreeSpaceDbuvM, Estimates, PlannedBy, ObstructionLossDb, Obstruction, FieldDbuvM, MedianDbuvM, Spread, gainDbd, levelDbm,
            ThermalNoiseDbm, ExternalNoiseDb,
        RequiredCnDb, RequiredCnProvenance) { RoofLossDb = RoofLossDb, AntennaNoiseK = AntennaNoiseK, ErpKw = ErpKw,
            PatternDb = PatternDb, StrongDbuvM = StrongDbuvM, Ground = Ground };

    public StationPlan ToPlan(double offAimDeg, StationBudget? budget) => new(
        Station.Id, Station.Name, Station.Site, Wanted, budget is not null, WhyNot, Station.System, Station.Mode, Station.Channel,
            Station.ShowsAs,
        Station.Polarisation, Channel.CentreMHz, DistanceKm, BearingTrueDeg, offAimDeg, budget);
}
