using Fastening.Internals;
using UnitsNet;

namespace Fastening;

/// <summary>The published embedding of one surface of each kind.</summary>
internal sealed record EmbeddingRow(Stated<Length> Thread, Stated<Length> Face, Stated<Length> Interface);
