namespace InstallPacket.Terrain.GeoTiff;

/// <summary>
/// Where the nodes of a north-up grid lie. A node is the middle of its cell, so the grid covers half a cell more than its outer nodes span,
/// whether the file counts from the corners of cells or from their middles.
/// </summary>
/// <param name="NorthDeg">Latitude of the first row of nodes [deg].</param>
/// <param name="WestDeg">Longitude of the first column of nodes [deg].</param>
/// <param name="RowStepDeg">Between rows, southward [deg].</param>
/// <param name="ColumnStepDeg">Between columns, eastward [deg].</param>
/// <param name="Rows">Number of rows.</param>
/// <param name="Columns">Number of columns.</param>
internal readonly record struct GridFrame(double NorthDeg, double WestDeg, double RowStepDeg, double ColumnStepDeg, int Rows, int Columns)
{
    // Tags round their steps: what lies this near to a node is meant to lie on it [cells].
    private const double Snap = 1e-6;

    // Nodes of two tiles that lie this near to each other are one [cells].
    private const double SameNode = 0.01;

    /// <summary>Whether a place lies in a cell.</summary>
    public bool Covers(double latitudeDeg, double longitudeDeg)
    {
        var (y, x) = Place(latitudeDeg, longitudeDeg);
        return y >= -0.5 - Snap && y <= Rows - 0.5 + Snap && x >= -0.5 - Snap && x <= Columns - 0.5 + Snap;
    }

    /// <summary>The place among the outer nodes, for a neighbour that looks for a node of its own grid here; null beyond them.</summary>
    public (double Row, double Column)? Among(double latitudeDeg, double longitudeDeg)
    {
        var (y, x) = Place(latitudeDeg, longitudeDeg);
        if (Math.Abs(y - Math.Round(y)) < SameNode) y = Math.Round(y);
        if (Math.Abs(x - Math.Round(x)) < SameNode) x = Math.Round(x);
        return y >= 0 && y <= Rows - 1 && x >= 0 && x <= Columns - 1 ? (y, x) : null;
    }

    /// <summary>The place in rows and columns of nodes, the first being 0.</summary>
    public (double Row, double Column) Place(double latitudeDeg, double longitudeDeg)
    {
        var x = (longitudeDeg - WestDeg) / ColumnStepDeg;
        var turn = 360 / ColumnStepDeg;
        if (x < -0.5 - Snap) x += turn;
        else if (x > Columns - 0.5 + Snap && x - turn >= -0.5 - Snap) x -= turn;
        return (OnNode((NorthDeg - latitudeDeg) / RowStepDeg), OnNode(x));
    }

    /// <summary>Latitude and longitude of a node, or of one beyond the edge [deg].</summary>
    public (double LatitudeDeg, double LongitudeDeg) Node(int row, int column) =>
        (NorthDeg - row * RowStepDeg, WestDeg + column * ColumnStepDeg);

    private static double OnNode(double at) => Math.Abs(at - Math.Round(at)) < Snap ? Math.Round(at) : at;
}
