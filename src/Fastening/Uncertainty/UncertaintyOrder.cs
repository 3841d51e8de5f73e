namespace Fastening.Quality;

/// <summary>How far the measurement function is expanded about the best values of its inputs (JCGM 100:2008 §5.1.2).</summary>
public enum UncertaintyOrder
{
    /// <summary>
    /// First order, and the second-order term of each pair of inputs about which first order says next to nothing: both first-order
    /// parts are below a tenth of it.
    /// </summary>
    SecondWhereFirstVanishes = 0,

    /// <summary>First order only, as the main text of the GUM.</summary>
    First = 1,

    /// <summary>First order and the second-order term of every pair of inputs.</summary>
    Second = 2,
}
