namespace InstallPacket.Plans.Codes;

/// <summary>The wind standard of a code family.</summary>
internal interface IWindCode
{
    /// <summary>The words for what the wind blows over.</summary>
    IReadOnlyList<string> Exposures { get; }

    /// <summary>Velocity pressure [Pa].</summary>
    /// <param name="work">Takes the rows.</param>
    /// <param name="wind">The wind of the job, its exposure one of <see cref="Exposures"/>.</param>
    /// <param name="heightM">Height above the ground [m].</param>
    Row PressurePa(Workings work, DesignWind wind, double heightM);

    /// <summary>The load of a strength check, in the unit of the load.</summary>
    /// <param name="work">Takes the row.</param>
    /// <param name="load">Force or line load of the wind as given.</param>
    /// <param name="subject">What it acts on.</param>
    Row Design(Workings work, Term load, Subject subject);

    /// <summary>The load of a strength check over that of the wind as given.</summary>
    double DesignFactor { get; }
}
