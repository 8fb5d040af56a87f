namespace InstallPacket.Tests.Fuzz;

/// <summary>What stands in the place of a value.</summary>
internal static class HostileWords
{
    /// <summary>Numbers that keep the unit behind them.</summary>
    public static readonly string[] Numbers =
    [
        "0", "-0", "-1", "1", "0.001", "0.5", "2", "7", "12", "19", "45", "89.99", "90", "179.9", "180", "360", "361", "400", "5000", "1e9",
        "1e308", "1e-320", "-1e308", "NaN", "Infinity", "-Infinity", "999999999999999999999999", "0.00000000001", "1,5", "1_000", "0x10",
        "1/2", "1/0", "-", "", ".", "1.2.3", "\u0663", "\u00BD", "2147483648", "-2147483649",
    ];

    /// <summary>Numbers that a slip of the pen gives.</summary>
    public static readonly string[] PlainNumbers = ["0", "1", "0.5", "2", "3", "7", "12", "19", "30", "45", "60", "90", "120", "200",
        "400", "5000"];

    private static readonly string Long = new('x', 5000);

    private static readonly string[] Texts =
    [
        "", " ", "null", "~", "true", "false", "0", "-1", "x", "\0", "\u001b[31m", "\u0085", "\u2028", "\u202E", "\u00A0", "\uFEFF",
        "\u0007", "\t", "\r",
        "\\", "'", "\"", "%", "#", "|", "<script>", "](javascript:x)", "![x](y)", "a|b", "**", "`", "<!--", "&amp;",
        "../../../../etc/passwd",
        "/etc/passwd", "..", "con", "{{ x }}", "{% include 'crew' %}", "%s", "\U0001D518", "\uD7FF", "\uFFFF", "\u0301", "\u05D0", Long,
    ];

    private static readonly string[] Units =
    [
        "5 m", "5 ft 99 in", "1/0 in", "1e5 m", "-40 dBm", "361 deg true", "91 N", "45 deg magnetic", "45 deg grid", "12 V", "3 kW",
        "5 ohm", "5",
        "0 m", "-5 m", "99999999 km", "NaN m", "1 mm", "0 deg true", "2026-02-30", "9999-12-31", "0001-01-01", "24:61", "1 h", "-14 h",
    ];

    private static readonly string[] Shapes =
    [
        "[]", "{}", "[[]]", "[x]", "{ x: y }", "{ x }", "&a [*a]", "*a", "&a 5 m", "!!binary x", "!tag x", "!!float 1", "|", ">", "- - -",
        "? x", "<<: *a",
        "---", "...", "%YAML 9.9", "@x", "`x", "[", "]", "{", "}", ": : :", ": ", "\n", "\n  - x", "\n    x: y", "#", " #", "'''",
        new('[', 30), new('{', 30), new('[', 20000),
        string.Concat(Enumerable.Repeat("- ", 2000)), string.Concat(Enumerable.Repeat("? ", 40)),
            "[" + string.Concat(Enumerable.Repeat("1, ", 9000)) + "]",
    ];

    private static readonly string[] Tags =
    [
        "{{", "}}", "{%", "%}", "{% if %}", "{% if job %}", "{% endif %}", "{% else %}", "{% for %}", "{% endfor %}",
        "{% for x in job %}", "{% for x in (1..1000) %}x{% endfor %}",
        "{% for x in (9..1) %}x{% endfor %}", "{% for x in (a..b) %}x{% endfor %}", "{% render 'crew' %}", "{% include 'crew' %}",
        "{% include 'packet' %}", "{% render name %}",
        "{% include 'none' %}", "{% include '../../etc/passwd' %}", "{% assign job = 1 %}", "{% assign a = b %}", "{% capture x %}",
        "{% endcapture %}", "{% cycle 'a', 'b' %}",
        "{% increment x %}", "{% raw %}", "{% comment %}", "{% liquid", "{% say %}", "{% say 'nothing' %}", "{% say job %}",
        "{% break %}", "{% continue %}", "{% case job %}",
        "{% unless x %}", "{% tablerow x in job %}", "{% macro m() %}", "{% nothing %}", "{{ job }}", "{{ job.nothing }}",
        "{{ job.title.x.y }}", "{{ job[0] }}", "{{ job['title'] }}",
        "{{ 1 | nothing }}", "{{ 1 | divided_by: 0 }}", "{{ 1 | modulo: 0 }}", "{{ 'x' | slice: 'y' }}", "{{ 'x' | slice: -9, 99999 }}",
        "{{ 'x' | truncate: -5 }}",
        "{{ 'x' | times: 'y' }}", "{{ 'x' | date: '%Q%' }}", "{{ 'x' | split: '' | join: ',' | first | last }}",
        "{{ 'x' | replace: '', 'yy' }}", "{{ 'x' | append: job }}", "{{ job | md_raw }}",
        "{{ '<b>' | md_raw }}", "{{ '9' | round: 99 }}", "{{ 1.5 | round: -3 }}", "{{ 79228162514264337593543950335 | plus: 1 }}",
        "{{ 9999999999999999999999999999999 | times: 9 }}",
        "{{ 'x' | sort: 'y' | map: 'z' | where: 'a' | uniq | compact | reverse }}", "{{ 'x' | format_number: 'Q9' }}",
        "{{ 'x' | base64_decode }}", "{{ '%' | url_decode }}",
        "{{ nil | size }}", "{{ blank }}", "{{ empty | first }}", "{{ x == y and }}", "{{ 'unclosed }}",
    ];

    private static readonly string[] Markdown =
    [
        "![x](figures/none.svg)", "![x](figures/../../x.svg)", "![x](http://x.example/y.png)", "![](figures/aim-card.svg)", "[x](#none)",
        "[x](javascript:y)", "| a | b\n|---|\n| c |", "|\n|-|\n",
        "> > > > > > > > x", new('>', 300), new('*', 400), new('[', 400), new('#', 9), "# ", "## {#x}", "<div>", "<!--", "```", "~~~ x",
        "- ", "1. ", "999999999999. x", "    code",
        "\n---\n", "***", "\\", "&#0;", "&#x202E;", "&nothing;", "\u2028", "\u05D0\u202E", "\U0001F600", "\u0301\u0301\u0301",
        "| |\n|:-:|\n| ![x](figures/level-ladder.svg) |", "- - - - - - x", string.Concat(Enumerable.Repeat("- ", 60)) + "x",
    ];

    private static readonly string[] Sheets =
    [
        "</style><script>x</script>", "@import url(http://x.example/)", "url(", "/*", "*/", "}", "{", "@media", "\\", "<!--", "]]>",
        "expression(x)", "\0", "\u001b[31m", Long,
    ];

    private static readonly string[] Git = ["<<<<<<< ours", "=======", ">>>>>>> theirs",
        "<<<<<<< HEAD\nformat: 1\n=======\nformat: 2\n>>>>>>> x"];

    /// <summary>For job and parts files.</summary>
    public static readonly string[] Yaml = [.. Texts, .. Numbers, .. Units, .. Units, .. Shapes, .. Git];

    /// <summary>For station lists.</summary>
    public static readonly string[] Csv = [.. Texts, .. Numbers, ",", ",,,,,,,", "\"", "\"\"", "\"x\n", "|", "\n", "43.5;99", "ATSC 9",
        "us-6", "eu-8", "eu-7", "both", "D0V0", "43|60|0", .. Git];

    /// <summary>For templates.</summary>
    public static readonly string[] Liquid = [.. Tags, .. Tags, .. Markdown, .. Texts, "{% for x in (1..1000) %}", "| x", "|", ".x", "[0]"];

    /// <summary>For the words of a theme.</summary>
    public static readonly string[] Spoken = [.. Tags, .. Tags, .. Texts, .. Shapes, .. Markdown];

    /// <summary>For style sheets.</summary>
    public static readonly string[] Css = [.. Sheets, .. Sheets, .. Texts, .. Numbers];
}
