namespace InstallPacket.Packets.Templates;

/// <summary>Text that is refused beyond a length.</summary>
/// <param name="limit">Most characters.</param>
/// <param name="what">What grows, for the message.</param>
internal sealed class BoundedWriter(int limit, string what) : StringWriter(System.Globalization.CultureInfo.InvariantCulture)
{
    public override void Write(char value)
    {
        Take(1);
        base.Write(value);
    }

    public override void Write(char[] buffer, int index, int count)
    {
        Take(count);
        base.Write(buffer, index, count);
    }

    public override void Write(ReadOnlySpan<char> buffer)
    {
        Take(buffer.Length);
        base.Write(buffer);
    }

    public override void Write(string? value)
    {
        Take(value?.Length ?? 0);
        base.Write(value);
    }

    private void Take(int count)
    {
        if (GetStringBuilder().Length + (long)count > limit) throw TemplateBounds.TooMuch(limit, what);
    }
}
