using System.Text.Json;

namespace InstallPacket.Cli.Tests.Forms;

/// <summary>The functions of the form's script, run in the browser.</summary>
public class FormHelperTests(Browser browser)
{
    // Each value worked out by hand from the tangents of a table.
    [Theory]
    [InlineData("heightFromFoot(20, 25, -4)", 10.7247)] // 20 (0.46631 + 0.06993)
    [InlineData("heightFromFoot(30, 12, 2)", 5.3291)] // 30 (0.21256 - 0.03492)
    [InlineData("heightFromEye(1.6, 10, 45)", 11.6)]
    [InlineData("heightFromStep(1.6, 6, 38, 25)", 8.5399)] // 1.6 + 6 / (2.14451 - 1.27994)
    [InlineData("heightFromStep(1.6, 15, 60, 20)", 8.5119)] // 1.6 + 15 / (2.74748 - 0.57735)
    [InlineData("heightFromShadow(1.5, 1.2, 8)", 10)]
    [InlineData("trueFromDeclination(214, -7.5)", 206.5)]
    [InlineData("trueFromDeclination(355, 9)", 4)]
    [InlineData("trueFromMark(100, 190, 196)", 106)]
    [InlineData("trueFromMark(2, 190, 184)", 356)]
    public async Task Tool_gives_the_worked_value(string call, double value) =>
        Assert.Equal(value, await (await browser.Open("fernleigh")).Page.EvaluateExpressionAsync<double>("surveyForm." + call), 3);

    [Theory]
    [InlineData("12 ft 6 in", "ft", "12 ft 6 in", 3.81)]
    [InlineData("12' 6\\\"", "ft", "12 ft 6 in", 3.81)]
    [InlineData("12'", "ft", "12 ft", 3.6576)]
    [InlineData("12 ft 6", "ft", "12 ft 6 in", 3.81)]
    [InlineData("5", "ft", "5 ft", 1.524)]
    [InlineData("3/16", "in", "3/16 in", 0.0047625)]
    [InlineData("2 2/3 in", "in", "2 2/3 in", 0.0677333)]
    [InlineData("3,8", "m", "3.8 m", 3.8)]
    [InlineData("-1 ft", "ft", "-1 ft", -0.3048)]
    [InlineData("38mm", "mm", "38 mm", 0.038)]
    public async Task Length_is_read_as_a_person_writes_it(string written, string usual, string text, double metres)
    {
        var read = await Read("fernleigh", $"readQuantity(\"{written}\", 'length', '{usual}')");
        Assert.Equal(text, read.GetProperty("text").GetString());
        Assert.Equal(metres, read.GetProperty("value").GetDouble(), 6);
    }

    [Theory]
    [InlineData("1e3", "no-unit")]
    [InlineData("tall", "no-number")]
    [InlineData("5 furlongs", "no-unit")]
    [InlineData("5 m 3 m", "no-number")]
    [InlineData("1/0", "no-number")]
    public async Task What_is_no_length_is_refused(string written, string problem) =>
        Assert.Equal(problem, (await Read("fernleigh", $"readQuantity('{written}', 'length', 'ft')")).GetProperty("problem").GetString());

    [Theory]
    [InlineData("43.6300 N, 99.1500 W", "43.6300 N, 99.1500 W")]
    [InlineData("43.6300, -99.1500", "43.6300 N, 99.1500 W")]
    [InlineData("-33.8712 151.2045", "33.8712 S, 151.2045 E")]
    public async Task Place_is_read_as_maps_write_it(string written, string text) =>
        Assert.Equal(text, (await Read("fernleigh", $"readCoordinates('{written}')")).GetProperty("text").GetString());

    [Fact]
    public async Task Free_text_comes_back_through_the_reader_of_jobs()
    {
        var phone = await browser.Open("fernleigh");
        string[] texts = ["no", "5e3", "a: b # c", "@home", "- dash", "\"quoted\" 'text'", "back\\slash", "{x}", "[y]", "tab\there", "Ærø, Øst", "&a *b !c", "100 %", "~", "trailing:"];
        foreach (var text in texts)
        {
            await phone.Type("title", text);
            var job = await phone.Page.EvaluateExpressionAsync<string>("surveyForm.jobText()");
            var map = YamlGate.Load(new("job.yaml", FileState.Present, job), new FindingList());
            Assert.Equal(text.Replace('\t', ' '), ((YamlScalar)map!.Entries.Single(e => e.Key.Value == "title").Value).Value);
        }
    }

    private async Task<JsonElement> Read(string firm, string call)
    {
        var phone = await browser.Shared(firm);
        return JsonDocument.Parse(await phone.Page.EvaluateExpressionAsync<string>($"JSON.stringify(surveyForm.{call})")).RootElement.Clone();
    }
}
