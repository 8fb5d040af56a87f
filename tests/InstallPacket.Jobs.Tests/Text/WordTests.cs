namespace InstallPacket.Jobs.Tests.Text;

public class WordTests
{
    [Fact]
    public void A_member_is_written_in_kebab_case()
    {
        Assert.Equal("gable-bracket", Word.Of(MountKind.GableBracket));
        Assert.Equal("ladder-and-roof", Word.Of(Access.LadderAndRoof));
        Assert.Equal("up-to-250-v", Word.Of(PowerCircuit.UpTo250V));
        Assert.Equal("above-250-v", Word.Of(PowerCircuit.Above250V));
        Assert.Equal("output-1", Word.Of(PowerPass.Output1));
        Assert.Equal("copper-clad-steel", Word.Of(Metal.CopperCladSteel));
    }

    [Fact]
    public void Words_that_the_trade_spells_in_another_way_keep_their_spelling()
    {
        Assert.Equal(["letter", "a4"], Word.All<PaperSize>());
        Assert.Equal(["dBuV", "dBmV", "dBm"], Word.All<LevelUnit>());
    }

    [Fact]
    public void Every_word_reads_back_as_its_member()
    {
        Assert.All(Enum.GetValues<PartKind>(), k => Assert.Equal(k, Word.Read<PartKind>(Word.Of(k))));
        Assert.All(Enum.GetValues<CableWay>(), w => Assert.Equal(w, Word.Read<CableWay>(Word.Of(w))));
    }

    [Theory]
    [InlineData("")]
    [InlineData("Antenna")]
    [InlineData("3")]
    [InlineData("antenna ")]
    public void Another_word_is_no_member(string word) => Assert.Null(Word.Read<PartKind>(word));

    [Fact]
    public void A_value_outside_the_set_has_no_word() => Assert.Throws<ArgumentOutOfRangeException>(() => Word.Of((PartKind)99));
}
