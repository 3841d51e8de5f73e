namespace Fastening;

/// <summary>The head of a bolt, as an elastic section of the shank (VDI 2230-1:2015 §5.1.1, from memory).</summary>
public enum BoltHead
{
    /// <summary>Hexagon head: 0.5 d.</summary>
    Hexagon = 0,

    /// <summary>Cylindrical head with hexagon socket: 0.4 d.</summary>
    HexagonSocket = 1,
}
