using System.Text;

namespace InstallPacket.Cli.Console;

/// <summary>Keeps control characters from a terminal: those of a file name, an option or a job must not steer it.</summary>
/// <param name="to">The terminal.</param>
internal sealed class CleanTerminal(ITerminal to) : ITerminal
{
    public TextWriter Out { get; } = new CleanWriter(to.Out);

    public TextReader? In => to.In;

    public TextWriter Error { get; } = new CleanWriter(to.Error);

    private sealed class CleanWriter : TextWriter
    {
        private readonly TextWriter _to;

        public CleanWriter(TextWriter to)
        {
            _to = to;
            CoreNewLine = to.NewLine.ToCharArray();
        }

        public override Encoding Encoding => _to.Encoding;

        public override void Write(char value) => _to.Write(IsStray(value) ? ' ' : value);

        public override void Write(string? value) =>
            _to.Write(value is null || !value.Any(IsStray) ? value : string.Concat(value.Select(c => IsStray(c) ? ' ' : c)));

        public override void Write(char[] buffer, int index, int count) => Write(new string(buffer, index, count));

        public override void WriteLine(string? value)
        {
            Write(value);
            _to.WriteLine();
        }

        public override void Flush() => _to.Flush();

        private static bool IsStray(char c) => char.IsControl(c) && c != '\n';
    }
}
