using InstallPacket.Cli;
using InstallPacket.Cli.Console;

namespace InstallPacket.Tests.Fuzz;

/// <summary>An input for which the program builds a packet, in a folder.</summary>
internal abstract class PacketKind : FuzzKind
{
    protected Scene Scene { get; } = new();

    public override void Dispose()
    {
        Scene.Dispose();
        base.Dispose();
    }

    /// <summary>Builds the packet of a job with the theme of the scene, and looks at what else was written.</summary>
    protected int Build(ITerminal terminal, string id, bool anew = false)
    {
        var before = Scene.Outside();
        try
        {
            var code = new CommandLine(terminal).Run(["build", "--jobs", Scene.Jobs, "--theme", Scene.Theme, "--out", Scene.Out,
                "--force", id]);
            var stray = Scene.Outside().Except(before).Concat(before.Except(Scene.Outside())).FirstOrDefault();
            Promise(stray is null, $"outside the output folder changed: {stray}");
            return code;
        }
        finally
        {
            if (anew) Scene.Renew();
            else Scene.Restore();
        }
    }
}
