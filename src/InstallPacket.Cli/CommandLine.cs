using System.CommandLine;

namespace InstallPacket.Cli;

/// <summary>The verbs and their options.</summary>
/// <param name="to">Where they print.</param>
/// <param name="installed">The folder that holds the generic parts and kits; those of the program when absent.</param>
internal sealed class CommandLine(ITerminal to, string? installed = null)
{
    private readonly CleanTerminal _terminal = new(to);
    private readonly Option<string> _jobs = new("--jobs") { Description = "The folder of jobs.", DefaultValueFactory = _ => "jobs" };
    private readonly Argument<string[]> _only = new("JOB") { Description = "Names of jobs; all when none is named.",
        Arity = ArgumentArity.ZeroOrMore };
    private readonly Option<string?> _theme = new("--theme") { Description = "A folder whose files replace those of the built-in theme." };

    /// <summary>Runs a command line and returns the exit code.</summary>
    public int Run(string[] arguments)
    {
        var root = new RootCommand("Compiles install packets for television antennas from plain-text jobs.");
        foreach (var command in new[] { Build(), Check(), Changes(), New(), Import(), Form(), Stations(), Parts(), Explain() }) root.Subcommands.Add(command);
        var result = root.Parse(arguments);
        if (result.Errors.Count > 0)
        {
            foreach (var error in result.Errors) _terminal.Error.WriteLine("installpacket: " + error.Message);
            _terminal.Error.WriteLine("`installpacket --help` lists the verbs and their options.");
            return ExitCode.WrongCommandLine;
        }
        return result.Invoke(new InvocationConfiguration { Output = _terminal.Out, Error = _terminal.Error,
            EnableDefaultExceptionHandler = false });
    }

    private Command Build()
    {
        var output = new Option<string>("--out") { Description = "The folder for the packets.", DefaultValueFactory = _ => "out" };
        var strict = new Option<bool>("--strict") { Description = "Fail when a job is stopped." };
        var force = new Option<bool>("--force") { Description = "Write every packet anew, also where nothing changed." };
        var pictures = new Option<bool>("--pictures") { Description = "Write each figure also as a PNG picture, to send by message." };
        var command = new Command("build", "Writes the packets of all jobs.") { _only, _jobs, _theme, output, strict, force, pictures };
        command.SetAction(r => new BuildCommand(_terminal, Options(r), r.GetValue(_theme), r.GetValue(output)!, r.GetValue(strict),
            r.GetValue(force), r.GetValue(pictures)).Run());
        return command;
    }

    private Command Check()
    {
        var command = new Command("check", "Plans all jobs, prints every finding, fails on a stop; writes nothing.") { _only, _jobs };
        command.SetAction(r => new CheckCommand(_terminal, Options(r)).Run());
        return command;
    }

    private Command Changes()
    {
        var from = new Option<string>("--from") { Description = "The git revision to compare with.", Required = true };
        var command = new Command("changes", "Prints as Markdown what differs between a git revision and now.") { _only, _jobs, _theme,
            from };
        command.SetAction(r => new ChangesCommand(_terminal, Options(r), r.GetValue(_theme), r.GetValue(from)!).Run());
        return command;
    }

    private Command New()
    {
        var name = new Argument<string?>("NAME") { Description = "Name of the new job: letters, digits, hyphens.", Arity = ArgumentArity.ZeroOrOne };
        var family = new Option<string?>("--family") { Description = "Code family: us or eu." };
        var mount = new Option<string?>("--mount") { Description = "Where the antenna goes: eave, wall, gable, chimney, roof (tripod), ground, ballast, attic; desk for a desk study." };
        var cable = new Option<string?>("--cable") { Description = "Cable in the house: new or existing." };
        var outlets = new Option<int?>("--outlets") { Description = "How many outlets, 1 to 8." };
        var firm = new Option<string?>("--firm") { Description = "A firm of _shared/firms for the job; without NAME: lays out a folder for a firm.", Arity = ArgumentArity.ZeroOrOne };
        var example = new Option<bool>("--example") { Description = "A complete job with everything written out and remarks." };
        var command = new Command("new", "Writes the shortest complete job of a kind; asks when nothing is said.") { name, family, mount, cable, outlets, firm, example, _jobs };
        command.SetAction(r => new NewCommand(_terminal, new(r.GetValue(_jobs)!, r.GetValue(name), r.GetValue(family), r.GetValue(mount), r.GetValue(cable), r.GetValue(outlets),
            r.GetResult(firm) is not null, r.GetValue(firm), r.GetValue(example))).Run());
        return command;
    }

    private Command Import()
    {
        var file = new Argument<string>("FILE") { Description = "A table (CSV, UTF-8): the first row names the columns by keys of a job, each further one is a house." };
        var firm = new Option<string?>("--firm") { Description = "A firm of _shared/firms; its file may map columns to keys." };
        var date = new Option<string?>("--date") { Description = "The day of work of rows that name none, as YYYY-MM-DD." };
        var command = new Command("import", "Turns a table of addresses into jobs or desk studies; nothing is written over.") { file, firm, date, _jobs };
        command.SetAction(r => new ImportCommand(_terminal, r.GetValue(_jobs)!, r.GetValue(file)!, r.GetValue(firm), r.GetValue(date)).Run());
        return command;
    }

    private Command Form()
    {
        var firm = new Option<string?>("--firm") { Description = "The firm, where several share a folder of jobs." };
        var output = new Option<string>("--out") { Description = "The file to write.", DefaultValueFactory = _ => "survey.html" };
        var command = new Command("form", "Writes the survey form: one page for a phone on site, which writes a job file.") { _jobs, _theme, firm, output };
        command.SetAction(r => new FormCommand(_terminal, new(r.GetValue(_jobs)!, []), r.GetValue(_theme), r.GetValue(firm), r.GetValue(output)!).Run());
        return command;
    }

    private Command Stations()
    {
        var file = new Argument<string>("FILE") { Description = "A station list: ours (CSV), or the regulator's query list in its text form." };
        var near = new Option<string?>("--near") { Description = "A job: distance and bearing count from its antenna." };
        var at = new Option<string?>("--at") { Description = "A place instead, for example \"43.62 N, 99.14 W\"." };
        var within = new Option<string?>("--within") { Description = "Keep what is not farther from there, for example \"150 km\"." };
        var status = new Option<string[]>("--status") { Description = "Statuses of the regulator's list to keep, with commas between; LIC when absent." };
        var channels = new Option<string?>("--channels") { Description = "RF channels to keep, for example 2-36." };
        var save = new Option<string?>("--save") { Description = "Write the stations to this file as a list of ours." };
        var replace = new Option<bool>("--replace") { Description = "Write over the file if it is there." };
        var command = new Command("stations", "Checks a station list, lists what is in it, and saves it as a list of ours.") { file, near,
            at, within, status, channels, save, replace, _jobs };
        command.SetAction(r => new StationsCommand(_terminal, new(r.GetValue(file)!, r.GetValue(_jobs)!)
        {
            Near = r.GetValue(near), At = r.GetValue(at), Within = r.GetValue(within), Status = r.GetValue(status) ?? [],
                Channels = r.GetValue(channels),
            Save = r.GetValue(save), Replace = r.GetValue(replace),
        }).Run());
        return command;
    }

    private Command Parts()
    {
        var words = new Argument<string[]>("WORD") { Description = "Words that stand in name or kind; all parts when none is given.", Arity = ArgumentArity.ZeroOrMore };
        var kind = new Option<string?>("--kind") { Description = "A kind of part, for example `splitter`." };
        var units = new Option<string?>("--units") { Description = "Print figures in these units, `us` or `metric`; as they are written when absent." };
        var copy = new Option<string?>("--copy") { Description = "Copy this part into _shared/parts/own.yaml, to be changed." };
        var called = new Option<string?>("--as") { Description = "The name of the copy." };
        var command = new Command("parts", "Lists the parts that jobs may name, with their figures; copies one for change.") { words, kind, units, copy, called, _jobs };
        command.SetAction(r => new PartsCommand(_terminal, Options(r.GetValue(_jobs)!), new(r.GetValue(words) ?? [])
        {
            Kind = r.GetValue(kind), Units = r.GetValue(units), Copy = r.GetValue(copy), As = r.GetValue(called),
        }).Run());
        return command;
    }

    private Command Explain()
    {
        var topic = new Argument<string>("TOPIC") { Description = "A finding (`channel-short`), a key (`siting.ground`), `keys`, `findings`, `schema`, `schema-firm`, `schema-kit` or `schema-parts`; or a job, printed in full." };
        var command = new Command("explain", "Explains a finding or a key, prints the key reference or the JSON Schema, or a job in full with the origin of each value.")
            { topic, _jobs };
        command.SetAction(r => new ExplainCommand(_terminal, Options(r.GetValue(_jobs)!), r.GetValue(topic)!).Run());
        return command;
    }

    private JobOptions Options(ParseResult r) => Options(r.GetValue(_jobs)!) with { Only = r.GetValue(_only) ?? [] };

    private JobOptions Options(string jobs) => new(jobs, []) { Installed = installed ?? InstalledData.Jobs };
}
