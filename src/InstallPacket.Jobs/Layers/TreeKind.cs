namespace InstallPacket.Jobs.Layers;

/// <summary>A piece of a job or values of a kit, kept as written until it is known what they stand for.</summary>
public sealed record TreeKind : KeyKind<YamlMap>;
