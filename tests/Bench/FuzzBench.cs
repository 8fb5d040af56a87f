using System.Diagnostics;
using System.Globalization;
using InstallPacket.Tests.Fuzz;

namespace InstallPacket.Bench;

/// <summary><c>fuzz --count N --seed S [--kind K] [--show]</c>: damaged inputs, many, and a table of what came of them.</summary>
internal static class FuzzBench
{
    private const int MostFaults = 20;

    /// <summary>Runs the inputs.</summary>
    /// <param name="arguments">What stands behind the verb.</param>
    /// <returns>0 when there was no fault.</returns>
    public static int Run(string[] arguments)
    {
        var (count, seed) = (int.Parse(Value(arguments, "--count") ?? "1000", CultureInfo.InvariantCulture), int.Parse(Value(arguments,
            "--seed") ?? "1", CultureInfo.InvariantCulture));
        var asked = FuzzKind.All.Where(k => Value(arguments, "--kind") is not { } name || k.Name == name).ToArray();
        if (asked.Length == 0)
        {
            Console.Error.WriteLine("kinds: " + string.Join(", ", FuzzKind.All.Select(k => k.Name)));
            return 2;
        }
        Console.WriteLine("| kind | goes as far as | inputs | exit 0 | exit 1 | exit 2 | exit 3 | faults | slowest s | memory MB | CPU s | first seed |");
        Console.WriteLine("|---|---|---:|---:|---:|---:|---:|---:|---:|---:|---:|---:|");
        var faults = 0;
        var left = (Inputs: count, Shares: 0);
        (string Name, FuzzKind Kind)[] kinds = [.. asked.Select(k => (k.Name, k.Make()))];
        left.Shares = kinds.Sum(k => k.Kind.Share);
        foreach (var (name, kind) in kinds)
        {
            // What rounding leaves goes to the last kind.
            var inputs = (int)Math.Round((double)left.Inputs * kind.Share / left.Shares);
            left = (left.Inputs - inputs, left.Shares - kind.Share);
            faults += new FuzzTally(name, kind, arguments.Contains("--show")).Run(seed, inputs);
            kind.Dispose();
        }
        return faults == 0 ? 0 : 1;
    }

    private static string? Value(string[] arguments, string option)
    {
        var at = Array.IndexOf(arguments, option);
        return at >= 0 && at + 1 < arguments.Length ? arguments[at + 1] : null;
    }

    /// <summary>Counts what comes of the inputs of one kind.</summary>
    private sealed class FuzzTally(string name, FuzzKind kind, bool show)
    {
        private static readonly TimeSpan Hang = TimeSpan.FromSeconds(60);
        private readonly int[] _codes = new int[4];
        private readonly List<string> _faults = [];
        private readonly Stopwatch _watch = new();
        private int _seed;
        private TimeSpan _before;
        private int _broken;
        private int _slowestSeed;
        private double _slowest;
        private long _memory;

        public int Run(int seed, int count)
        {
            var cpu = Process.GetCurrentProcess().TotalProcessorTime;
            using var guard = new Timer(_ => Watch(), null, 50, 50);
            for (var i = 0; i < count; i++) One(seed + i);
            var spent = (Process.GetCurrentProcess().TotalProcessorTime - cpu).TotalSeconds;
            Console.WriteLine(string.Create(CultureInfo.InvariantCulture,
                $"| {name} | {kind.Depth} | {count} | {_codes[0]} | {_codes[1]} | {_codes[2]} | {_codes[3]} | {_broken} | {_slowest:0.00} (seed {_slowestSeed}) | {_memory / 1048576} | {spent:0} | {seed} |"));
            foreach (var fault in _faults) Console.WriteLine(fault);
            return _broken;
        }

        private void One(int seed)
        {
            _seed = seed;
            _before = Process.GetCurrentProcess().TotalProcessorTime;
            _watch.Restart();
            var outcome = kind.Run(seed);
            var seconds = _watch.Elapsed.TotalSeconds;
            if (seconds > _slowest) (_slowest, _slowestSeed) = (seconds, seed);
            if (show) Console.WriteLine(outcome.Printed);
            _codes[Math.Clamp(outcome.Code, 0, 3)]++;
            if (outcome.Fault.Length == 0) return;
            _broken++;
            if (_faults.Count < MostFaults) _faults.Add($"--kind {name} --seed {seed} --count 1: {outcome.Fault}");
        }

        // One thread reads what the other writes; a late look is good enough. A hang ends the run, with its seed.
        private void Watch()
        {
            _memory = Math.Max(_memory, Environment.WorkingSet);
            // A busy machine makes nobody hang: time of the processor counts, and of the clock only as a last resort.
            if (Process.GetCurrentProcess().TotalProcessorTime - _before < Hang && _watch.Elapsed < 20 * Hang) return;
            Console.Error.WriteLine($"hangs: --kind {name} --seed {_seed} --count 1");
            Environment.Exit(3);
        }
    }
}
