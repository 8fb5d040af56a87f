// The tasks of the build. Every task is a call of a command that also works by hand; keep it that way.
//   ./build.sh                         build all packets of jobs/ into out/
//   ./build.sh --target=Check          plan all jobs, print the findings, fail on a stop
//   ./build.sh --target=Changes --from=REV
//   ./build.sh --target=Test | Bench | Clean
// A firm's own work: --jobs=DIR --theme=DIR --out=DIR

var target = Argument("target", "Packets");
var jobs = Argument("jobs", "jobs");
var theme = Argument("theme", "");
var output = Argument("out", "out");
var from = Argument("from", "HEAD");
// The script lives in build/; its commands run from the top of the checkout.
Context.Environment.WorkingDirectory = Context.Environment.WorkingDirectory.Combine("..").Collapse();
const string cli = "src/InstallPacket.Cli/InstallPacket.Cli.csproj";
const string program = "src/InstallPacket.Cli/bin/Release/net10.0/installpacket.dll";

void Run(string arguments, string failure)
{
    var code = StartProcess("dotnet", new ProcessSettings { Arguments = arguments });
    if (code != 0) throw new CakeException(code, $"{failure} (exit code {code})");
}

string Quoted(string path) => "\"" + path.Replace("\"", "") + "\"";

Task("Compile").Does(() => Run($"build {cli} -c Release -v quiet --nologo", "The program does not compile"));

Task("Packets").IsDependentOn("Compile").Does(() =>
    Run($"{program} build --jobs {Quoted(jobs)} --out {Quoted(output)}" + (theme.Length > 0 ? $" --theme {Quoted(theme)}" : ""), "Not every packet was built"));

Task("Check").IsDependentOn("Compile").Does(() => Run($"{program} check --jobs {Quoted(jobs)}", "A job is stopped or cannot be read"));

Task("Changes").IsDependentOn("Compile").Does(() => Run($"{program} changes --from {Quoted(from)} --jobs {Quoted(jobs)}", "The changes could not be listed"));

Task("Test").Does(() => Run("test --solution InstallPacket.sln", "A test failed"));

Task("Bench").Does(() => Run("run -c Release --project tests/Bench", "The measurements failed"));

Task("Clean").Does(() =>
{
    CleanDirectories("src/*/bin");
    CleanDirectories("src/*/obj");
    CleanDirectories("tests/*/bin");
    CleanDirectories("tests/*/obj");
    CleanDirectory(output);
});

RunTarget(target);
