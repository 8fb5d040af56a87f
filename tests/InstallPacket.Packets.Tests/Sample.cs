using System.Globalization;
using System.Text;
using InstallPacket.Drawings;
using InstallPacket.Packets.Language;

namespace InstallPacket.Packets.Tests;

/// <summary>A document with everything that a packet may hold, long enough to turn pages.</summary>
public static class Sample
{
    public static readonly Theme Theme = Theme.FromFolder(Path.Combine(Root(), "theme"));

    public static readonly Drawing Aim = new(
        "aim", "Aim of the antenna", "Plan of the roof with a sight line to the north-east, 47° true.", 160, 90,
        [
            new Polyline([new(20, 20), new(140, 20), new(140, 75), new(20, 75)], new Pen(Ink.Line, 0.5), Closed: true, Fill.Tint),
            new Polyline([new(20, 47.5), new(140, 47.5)], new Pen(Ink.Faint, 0.25, Dash.DashDot)),
            new Circle(new(80, 47.5), 18, new Pen(Ink.Faint, 0.2, Dash.Dotted)),
            new Circle(new(80, 47.5), 2, new Pen(Ink.Accent, 0.3), Fill.Solid),
            new Polyline([new(80, 47.5), new(120, 12)], new Pen(Ink.Accent, 0.8)),
            new Polyline([new(80, 47.5), new(60, 85)], new Pen(Ink.Warning, 0.6, Dash.Dashed)),
            new Polyline([new(120, 12), new(117.2, 12.8), new(118.8, 14.6)], new Pen(Ink.Accent, 0.3), Closed: true, Fill.Solid),
            new Caption(new(122, 11), "47° true, 38.2 km", 4, Ink.Accent, Strong: true),
            new Caption(new(80, 57), "mast ≤ 3 m", 3.2, Anchor: Anchor.Middle),
            new Caption(new(17, 47.5), "ridge 7.4 m", 3.2, Ink.Faint, Anchor.Middle, TurnDeg: -90),
            new Caption(new(58, 88), "power line", 3.2, Ink.Warning, Anchor.End),
        ]);

    public static PacketDocument Document(string? stamp = null) => new(
        "crew", "Installation: 12 Mill Lane", Markdown(),
        new Dictionary<string, Drawing> { ["aim"] = Aim }, stamp, "Job mill-lane · revision 3 · 2025-03-14",
        new JobWords(Theme.Words("en-US"), false, LevelUnit.DBuV));

    private static string Markdown()
    {
        var text = new StringBuilder("""
            # Installation: 12 Mill Lane

            Aim the antenna at **47° true** (51° magnetic) and keep the *lower* boom ≥ 1.5 m above the roof. The feeder is 75 Ω; the
            loss must stay ≤ 3.2 dB at 20 °C, the level at the outlet −60 dBm, the conductor 16 mm². See [the aim](#aim-and-place), the
            [maker's sheet](https://example.org/sheets/yagi) or write to <crew@example.org>. Set `lnb = off` first.

            ::: stop Power line within 3 m
            Do not raise the mast before the line is **switched off and earthed**. Call the network operator.
            :::

            ## Aim and place

            ![Aim](figures/aim.svg)

            The line of sight clears the neighbour's ridge. A word without end follows:
            `registry/of/parts/with-a-very-long-name/that-does-not-fit-a-narrow-screen/part-0001-of-0042/revision-b-draft-final-2`
            and Donaudampfschifffahrtselektrizitätenhauptbetriebswerkbauunterbeamtengesellschaftsversammlungsraumschlüsselverwaltung.

            ::: caution
            Roof tiles are wet until noon.

            - use the roof ladder
            - clip on before the step over
            :::

            ::: note
            The customer is at home after 14:00.
            :::

            ### Steps

            - [ ] Check the **live line** detector, then look for a service drop that was not on the survey; if there is one, stop
            - [x] Put up the ladder 1 : 4 and tie it
            - [ ] Fix the bracket
              - two M8 screws, 14 N·m
              - sealant under the plate

            1. First
            2. Second
               1. Inner one
               2. Inner two
            3. Third

            > Old cables are cut only when both ends are known.

            ---

            ## Levels at the outlets

            | Outlet | Room | Weakest channel | Level (dBm) | Margin (dB) | Remark |
            |:--|:--|:-:|--:|--:|:--|

            """);
        for (var i = 1; i <= 40; i++)
            text.Append(CultureInfo.InvariantCulture, $"| {i} | room {i} | {21 + i} | −{50 + i}.{i % 10} | {i % 7}.5 | {(i % 6 == 0 ? "far end of the run, behind the [splitter](#steps) in the loft, measured twice" : "ok")} |\n");
        text.Append("\n## Narrow table\n\n| Part | Count |\n|:--|--:|\n| Clip 7 mm | 24 |\n| Boot | 4 |\n\nDone.\n");
        for (var i = 1; i <= 4; i++)
        {
            text.Append(CultureInfo.InvariantCulture, $"\n## Chapter {i}\n\n");
            for (var k = 0; k < 5; k++)
                text.Append("The mast stands on two wall brackets 0.6 m apart; the upper one carries the pull of the wind, the lower one the push. Between them the wall must be sound: knock, listen, drill a trial hole and look at the dust. If it is soft, choose another place and tell the office, since the forces were worked out for this one.\n\n");
        }
        return text.Append("```\nscan 21-48\nsave\n```\n").ToString();
    }

    private static string Root()
    {
        var folder = new DirectoryInfo(AppContext.BaseDirectory);
        while (folder is not null && !File.Exists(Path.Combine(folder.FullName, "InstallPacket.sln"))) folder = folder.Parent;
        return folder?.FullName ?? throw new DirectoryNotFoundException("the tests run outside the repository");
    }
}
