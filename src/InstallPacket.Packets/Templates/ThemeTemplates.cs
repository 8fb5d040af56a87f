using System.Text;
using Fluid;
using Microsoft.Extensions.FileProviders;
using Microsoft.Extensions.Primitives;

namespace InstallPacket.Packets.Templates;

/// <summary>Lets templates render other templates of the theme, and nothing else: no disk.</summary>
internal sealed class ThemeTemplates(Theme theme) : IFileProvider
{
    public const string Ending = ".md.liquid";

    public IFileInfo GetFileInfo(string subpath)
    {
        var name = subpath.EndsWith(Ending, StringComparison.Ordinal) ? subpath[..^Ending.Length] : subpath;
        if (theme.Template(name) is not { } text) return new NotFoundFileInfo(subpath);
        // The engine parses it by itself and does not see our bounds.
        if (PacketParser.Instance.TryParse(text, out var template)) TemplateBounds.CheckRanges(template, text);
        return new Found(subpath, Encoding.UTF8.GetBytes(text));
    }

    public IDirectoryContents GetDirectoryContents(string subpath) => NotFoundDirectoryContents.Singleton;

    public IChangeToken Watch(string filter) => throw new NotSupportedException("a theme does not change while it is used");

    private sealed class Found(string name, byte[] bytes) : IFileInfo
    {
        public bool Exists => true;

        public long Length => bytes.Length;

        public string? PhysicalPath => null;

        public string Name => name;

        public DateTimeOffset LastModified => DateTimeOffset.UnixEpoch;

        public bool IsDirectory => false;

        public Stream CreateReadStream() => new MemoryStream(bytes, writable: false);
    }
}
