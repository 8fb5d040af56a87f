namespace InstallPacket.Plans.Codes;

/// <summary>A limit and the rule that states it.</summary>
/// <param name="Value">The limit, in the unit that its property names.</param>
/// <param name="Rule">The rule.</param>
public sealed record RuleLimit(double Value, CodeRule Rule)
{
    /// <summary>Where the limit comes from, as findings print it.</summary>
    public string From => $"{Rule.Document}{(Rule.Edition == "-" ? "" : ", " + Rule.Edition)}; check the local code" + Rule.Provenance switch { "memory" => "; verify: from memory", "derived" => "; our rule", _ => "" };
}
