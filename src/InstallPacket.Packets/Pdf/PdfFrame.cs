using InstallPacket.Drawings;
using PdfSharp.Drawing;

namespace InstallPacket.Packets.Pdf;

/// <summary>
/// The frame of a notice: a stop is closed and heavy all around, a caution is closed with a heavy left edge, a note has a double
/// left edge only. Shape and weight tell them apart without colour.
/// </summary>
internal static class PdfFrame
{
    public static void Draw(XGraphics graphics, FlowFrame frame, double top, double height)
    {
        var box = new XRect(frame.Left, top, frame.Width, height);
        switch (frame.Kind)
        {
            case "stop":
                box.Inflate(-1.5, 0);
                graphics.DrawRectangle(Pen(3), box);
                break;
            case "caution":
                graphics.DrawRectangle(Pen(0.8), box);
                Bar(graphics, frame.Left, top, height, 5);
                break;
            default:
                Bar(graphics, frame.Left, top, height, 1.6);
                Bar(graphics, frame.Left + 3.6, top, height, 0.8);
                break;
        }
    }

    private static XPen Pen(double weight) => new(PdfFonts.Colour(Palette.Rgb(Ink.Line)), weight);

    private static void Bar(XGraphics graphics, double left, double top, double height, double weight) =>
        graphics.DrawRectangle(new XSolidBrush(PdfFonts.Colour(Palette.Rgb(Ink.Line))), left, top, weight, height);
}
