using UglyToad.PdfPig;
using UglyToad.PdfPig.Tokens;

namespace InstallPacket.Packets.Tests;

/// <summary>Walks the structure tree of a PDF.</summary>
internal sealed class PdfStructure
{
    private readonly PdfDocument _pdf;
    private readonly List<(string Tag, DictionaryToken Element)> _elements = [];

    public PdfStructure(PdfDocument pdf)
    {
        _pdf = pdf;
        if (Resolve(pdf.Structure.Catalog.CatalogDictionary.Data.GetValueOrDefault("StructTreeRoot")) is DictionaryToken root) Walk(root);
    }

    public string? Language => (Resolve(_pdf.Structure.Catalog.CatalogDictionary.Data.GetValueOrDefault("Lang")) as StringToken)?.Data;

    public IEnumerable<string> Tags => _elements.Select(e => e.Tag);

    public IEnumerable<DictionaryToken> Of(string tag) => _elements.Where(e => e.Tag == tag).Select(e => e.Element);

    public string? Text(DictionaryToken element, string key) => Resolve(element.Data.GetValueOrDefault(key)) switch
    {
        StringToken s => s.Data,
        HexToken h => h.Data,
        NameToken n => n.Data,
        _ => null,
    };

    public DictionaryToken? Dictionary(DictionaryToken element, string key) => Resolve(element.Data.GetValueOrDefault(key)) as DictionaryToken;

    private void Walk(IToken? token)
    {
        switch (Resolve(token))
        {
            case ArrayToken array:
                foreach (var item in array.Data) Walk(item);
                break;
            case DictionaryToken element:
                if (Text(element, "S") is { } tag) _elements.Add((tag, element));
                if (element.Data.TryGetValue("K", out var kids)) Walk(kids);
                break;
        }
    }

    private IToken? Resolve(IToken? token) =>
        token is IndirectReferenceToken reference ? _pdf.Structure.GetObject(reference.Data).Data : token;
}
