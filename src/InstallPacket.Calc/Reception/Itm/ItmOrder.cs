namespace InstallPacket.Calc.Reception.Itm;

/// <summary>One element of an order, without sorting the rest: a full sort would cost more than all other terrain work.</summary>
internal static class ItmOrder
{
    /// <summary>The element that would stand at an index after sorting upward; smaller ones end up before it, greater ones behind
    /// it.</summary>
    /// <param name="values">Values without NaN, rearranged in place.</param>
    /// <param name="index">Index, from 0.</param>
    public static double Smallest(Span<double> values, int index)
    {
        int low = 0, high = values.Length - 1;
        while (low < high)
        {
            var (left, right) = Split(values, low, high, MiddleOfThree(values[low], values[(low + high) / 2], values[high]));
            if (index <= right) high = right;
            else if (index >= left) low = left;
            else break;
        }
        return values[index];
    }

    // Up to Right nothing is above the pivot, from Left on nothing is below it.
    private static (int Left, int Right) Split(Span<double> values, int left, int right, double pivot)
    {
        while (left <= right)
        {
            while (values[left] < pivot) left++;
            while (values[right] > pivot) right--;
            if (left > right) break;
            (values[left], values[right]) = (values[right], values[left]);
            left++;
            right--;
        }
        return (left, right);
    }

    private static double MiddleOfThree(double a, double b, double c) => Math.Max(Math.Min(a, b), Math.Min(Math.Max(a, b), c));
}
