using InstallPacket.Jobs.Layers;

namespace InstallPacket.Jobs.Tests.Layers;

public class HouseWallsTests
{
    private static readonly (double, double)[] Box = [(0, 0), (12, 0), (12, 8), (0, 8)];

    // Plan up is where the back of the house looks: with the front to the south the plan has north above.
    [Theory]
    [InlineData(0, 180, 1)]
    [InlineData(0, 90, 2)]
    [InlineData(0, 0, 3)]
    [InlineData(0, 270, 4)]
    [InlineData(30, 180, 1)]
    [InlineData(30, 270, 4)]
    [InlineData(90, 270, 1)]
    [InlineData(90, 0, 4)]
    public void A_wall_is_found_by_the_way_it_faces(double planUpDeg, double sideDeg, int wall) =>
        Assert.Equal(wall, new HouseWalls(Box, planUpDeg).Facing(sideDeg)!.Number);

    [Fact]
    public void The_way_around_the_footprint_does_not_matter()
    {
        var walls = new HouseWalls([.. Box.Reverse()], 0);
        Assert.Equal(270, walls.Facing(270)!.FacesDeg, 6);
        Assert.Equal(8, walls.Facing(270)!.LengthM, 6);
    }

    [Fact]
    public void A_wall_between_two_sides_is_neither() => Assert.Null(new HouseWalls(Box, 45).Facing(0));

    [Fact]
    public void Several_walls_to_one_side_are_none() =>
        Assert.Null(new HouseWalls([(0, 0), (12, 0), (12, 4), (6, 4), (6, 8), (0, 8)], 0).Facing(0));

    [Fact]
    public void A_corner_is_the_end_of_the_wall_toward_its_side()
    {
        var west = new HouseWalls(Box, 0).Facing(270)!;
        Assert.False(west.StartsAt(180));
        Assert.True(west.StartsAt(0));
        Assert.Null(west.StartsAt(270));
    }

    // Somebody who faces the front of a house from outside has its first corner on the left when the footprint goes round to the left.
    [Fact]
    public void A_wall_has_a_number_and_two_ends()
    {
        Assert.True(new HouseWalls(Box, 0).Numbered(3)!.StartsLeft);
        Assert.False(new HouseWalls([.. Box.Reverse()], 0).Numbered(3)!.StartsLeft);
        Assert.Null(new HouseWalls(Box, 0).Numbered(5));
    }
}
