using Fastening.Equations;
using UnitsNet;

namespace Fastening.Tests.Equations;

public class DerivationTextTests
{
    /// <summary>1/633 kN/mm could be read as 1/633 of a kN/mm.</summary>
    [Fact]
    public void A_divisor_with_a_slash_in_its_unit_stands_in_brackets()
    {
        BoltCompliance bolt = BoltCompliance.Textbook(
            ScrewThread.Parse("M12"), Length.FromMillimeters(60), Length.FromMillimeters(30), Length.FromMillimeters(40), ElasticMaterial.Steel);

        Assert.Matches(@"1/\(\d+\.\d+ kN/mm\)", Derivation.Of(() => bolt.MetersPerNewton).ToString());
    }
}
