namespace Fastening;

/// <summary>Which end of the stated error of the stiffness a tightening counts with.</summary>
internal enum StiffnessCorner
{
    AsCalculated = 0,

    Softest = 1,

    Stiffest = 2,
}
