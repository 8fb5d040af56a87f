using CsCheck;
using InstallPacket.Calc.Sources;

namespace InstallPacket.Calc.Tests.Sources;

public class CsvTextTests
{
    [Fact]
    public void Each_field_knows_the_line_and_column_of_its_first_sign()
    {
        var records = CsvText.Records("# remark\na, bc ,\"d,e\"\n\n  x,,\"two\nlines\",  last\n,\n");
        Assert.Equal([2, 4, 6], records.Select(r => r.Line));
        Assert.Equal([new(2, 1), new(2, 4), new(2, 8)], records[0].Places);
        Assert.Equal(["x", "", "two\nlines", "last"], records[1].Fields);
        Assert.Equal([new(4, 3), new(4, 5), new(4, 6), new(5, 10)], records[1].Places);
        Assert.Equal([new(6, 1), new(6, 2)], records[2].Places);
    }

    [Fact]
    public void In_any_text_every_field_has_a_place_inside_it()
    {
        var piece = Gen.OneOf(Gen.OneOf(",", "\"", "\"\"", "\n", "\r\n", "#", " ", "\t"), Gen.String[0, 4]);
        piece.Array[0, 30].Sample(pieces =>
        {
            var text = string.Concat(pieces);
            var lines = text.Split('\n');
            foreach (var r in CsvText.Records(text))
            {
                Assert.Equal(r.Fields.Count, r.Places.Count);
                Assert.All(r.Places, p => Assert.InRange(p.Line, r.Line, lines.Length));
                Assert.All(r.Places, p => Assert.InRange(p.Column, 1, lines[p.Line - 1].Length + 1));
            }
        });
    }
}
