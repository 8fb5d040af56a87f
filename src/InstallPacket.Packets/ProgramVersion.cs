using System.Reflection;

namespace InstallPacket.Packets;

/// <summary>The version of the program, as printed in every packet.</summary>
public static class ProgramVersion
{
    /// <summary>For example <c>0.1.0</c>.</summary>
    public static string Text { get; } =
        Assembly.GetExecutingAssembly().GetCustomAttribute<AssemblyInformationalVersionAttribute>()?.InformationalVersion ?? "0";
}
