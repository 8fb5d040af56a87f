using System.Text;
using InstallPacket.Cli;
using InstallPacket.Cli.Console;

namespace InstallPacket.Tests.Fuzz;

/// <summary>A damaged station list, of ours or of the regulator: <c>stations</c> with options, sound and unsound.</summary>
internal sealed class StationKind : FuzzKind
{
    private static readonly string[] Lists = ["lindmark", "ormvik", "tamarack"];
    private static readonly string[][] Options =
    [
        [], ["--at", "43.62 N, 99.14 W"], ["--at", "43.62 N, 99.14 W", "--within", "150 km"], ["--channels", "2-36"], ["--status",
            "LIC,CP"], ["--at", "91 N, 0 E"], ["--within", "5 km"],
        ["--channels", "36-2"], ["--at", "\u001b[31m"], ["--status", "\u001b"], ["--channels", "x\u0007"],
    ];

    private readonly Scene _scene = new();

    public override string Depth => "read, list";

    public override int Share => 480;

    public override int InTests => 100;

    public override void Dispose()
    {
        _scene.Dispose();
        base.Dispose();
    }

    protected override int Try(Random random, ITerminal terminal)
    {
        var foreign = random.Next(3) == 0;
        var sound = foreign ? Regulator() : _scene.Read($"jobs/_shared/stations/{Pick(random, Lists)}.csv");
        _scene.Put("list.csv", new Damage(random, HostileWords.Csv).Of(sound));
        // Few people give options, and an unsound one keeps the list from being read.
        string[] options = random.Next(4) > 0 ? [] : Pick(random, Options);
        return new CommandLine(terminal).Run(["stations", _scene.Full("list.csv"), .. options]);
    }

    private static byte[] Regulator() => Encoding.Latin1.GetBytes(string.Concat(RegulatorRows.Faulty.Take(3).Concat(Enumerable.Range(2, 6).Select(c => RegulatorRows.Row(channel: $"{c}")))));
}
