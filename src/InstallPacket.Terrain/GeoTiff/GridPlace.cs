namespace InstallPacket.Terrain.GeoTiff;

/// <summary>Finds the frame of a grid in the tags that place it.</summary>
internal static class GridPlace
{
    private const double LeastStepDeg = 0.01 / 3600;
    private const double MostStepDeg = 1;
    private const string NorthUp = "a north-up grid is read: a pixel scale and one tie point";

    /// <summary>The frame of a north-up grid.</summary>
    /// <exception cref="UnfitTileException">Rotated, warped, scaled in height, or not on the globe.</exception>
    public static GridFrame Frame(TiffDirectory tags, TiffLayout layout, bool isPoint)
    {
        if (tags.Has(TiffTag.ModelTransformation)) throw Transformed(tags.Doubles(TiffTag.ModelTransformation, 16));
        var scale = Numbers(tags, TiffTag.ModelPixelScale, 3);
        if (tags.Has(TiffTag.ModelTiepoint)
            && tags.Count(TiffTag.ModelTiepoint) is > 6 and var many) throw new UnfitTileException($"has {many / 6} tie points", NorthUp);
        var tie = Numbers(tags, TiffTag.ModelTiepoint, 6);
        if (scale[2] is not (0 or 1) || tie[2] != 0
            || tie[5] != 0) throw new UnfitTileException(FormattableString.Invariant($"has scaled heights (factor {scale[2]}, offset {tie[5]})"), "heights in metres as they are stored are read");
        if (scale[1] < 0) throw new UnfitTileException("has rows from south to north", NorthUp);
        Step(scale[0]);
        Step(scale[1]);
        // Areas count from the corner of the first cell, whose node is its middle.
        var half = isPoint ? 0 : 0.5;
        var frame = new GridFrame(tie[4] + (tie[1] - half) * scale[1], Turned(tie[3] - (tie[0] - half) * scale[0]), scale[1], scale[0],
            layout.Rows, layout.Columns);
        CheckGlobe(frame);
        return frame;
    }

    private static double[] Numbers(TiffDirectory tags, TiffTag tag, int count)
    {
        var numbers = tags.Doubles(tag, 16);
        if (numbers.Length != count
            || !numbers.All(double.IsFinite)) throw new UnfitTileException($"has an unsound {TiffDirectory.Name(tag)}",
            $"{count} finite numbers are read");
        return numbers;
    }

    private static UnfitTileException Transformed(double[] matrix) =>
        matrix.Length == 16 && (matrix[1] != 0 || matrix[4] != 0) ? new("has a rotated grid", NorthUp)
            : new("has a grid placed by a matrix", NorthUp);

    private static void Step(double deg)
    {
        if (!(deg >= LeastStepDeg
            && deg <= MostStepDeg)) throw new UnfitTileException(FormattableString.Invariant($"has cells of {deg} degrees"),
            "0.01 arc-seconds to 1 degree are read");
    }

    private static double Turned(double longitudeDeg) => longitudeDeg is >= -180 and < 180 ? longitudeDeg
        : longitudeDeg - 360 * Math.Floor((longitudeDeg + 180) / 360);

    private static void CheckGlobe(GridFrame frame)
    {
        var southDeg = frame.NorthDeg - (frame.Rows - 1) * frame.RowStepDeg;
        if (!(frame.NorthDeg <= 90 + frame.RowStepDeg && southDeg >= -90 - frame.RowStepDeg))
            throw new UnfitTileException(FormattableString.Invariant($"lies off the globe: rows from {frame.NorthDeg} to {southDeg} degrees"), "latitudes of 90 S to 90 N are read");
        if (!((frame.Columns - 1) * frame.ColumnStepDeg <= 360)) throw new UnfitTileException(FormattableString.Invariant($"is {frame.Columns * frame.ColumnStepDeg} degrees wide"), "one turn of longitude is read");
    }
}
