using InstallPacket.Cli;
using InstallPacket.Jobs;

var t = new SystemTerminal();
var files = new FolderJobFiles(args[0], InstalledData.Jobs);
var set = PlannedJob.All(files, args[1..]);
var printer = new FindingPrinter(files, args[0] + "/");
printer.Print(t.Error, set.SharedFindings);
foreach (var j in set.Jobs)
{
    t.Out.WriteLine($"== {j.Id} {(j.Plan is null ? "unreadable" : j.Plan.Stopped ? "stopped" : "planned")}");
    printer.Print(t.Out, j.Findings);
    if (j.Plan is not null) File.WriteAllText($"/tmp/{j.Id}.json", InstallPacket.Plans.PlanJson.Text(InstallPacket.Plans.PlanJson.Tree(j.Plan)));
}
