using System.Reflection;
using Fastening.Equations;
using Fastening.Tests.Answers;
using UnitsNet;

namespace Fastening.Tests.House;

/// <summary>Every answer of the public face that a derivation could end on: a quantity, a number, or the properties of a result.</summary>
internal static class DerivableAnswers
{
    private const int Draws = 6;

    /// <summary>What may be asked for a derivation, by a key that names the member and, of a result, the property.</summary>
    /// <param name="isMadeInside">Whether the receiver is made within the call: an answer that it keeps of its making has its origin there.</param>
    public static IEnumerable<(string Key, DerivableCall Call)> All(bool isMadeInside)
    {
        foreach (Member member in Member.All().DistinctBy(member => member.Signature))
        {
            Type answer = Bare(member.AnswerType);
            if (IsValue(answer) || typeof(IDerived).IsAssignableFrom(answer))
            {
                foreach (DerivableCall call in Calls(member, isMadeInside)) yield return (member.Signature, call);
            }

            if (IsResult(answer))
            {
                foreach (PropertyInfo property in AnswerReader.PropertiesOf(answer).Where(property => IsValue(Bare(property.PropertyType))))
                {
                    foreach (DerivableCall call in Calls(member, isMadeInside)) yield return ($"{member.Signature} | .{FormerNames.OfMember(TypeNames.Now(answer), property.Name)}", call with { Ask = () => call.Ask() is object result ? property.GetValue(result) : null });
                }
            }
        }
    }

    /// <summary>An object that only calls make: what it shows is asked through the call. What has a pool of its own is asked for itself.</summary>
    private static bool IsResult(Type type) => type.Assembly == typeof(ScrewThread).Assembly && type.IsClass && !RandomObjects.Makers.ContainsKey(TypeNames.InRecord(type));

    private static bool IsValue(Type type) => type == typeof(double) || (typeof(IQuantity).IsAssignableFrom(type) && type.IsValueType);

    private static Type Bare(Type type) => Nullable.GetUnderlyingType(type) ?? type;

    private static IEnumerable<DerivableCall> Calls(Member member, bool isMadeInside)
    {
        for (int n = 0; n < Draws; n++)
        {
            string seed = $"derive {member.Signature} {n}";
            int chosen = new Draw(seed).Next(RandomObjects.PoolSize);
            object? outside = member.HasReceiver && !isMadeInside ? RandomObjects.Pool(member.Subject)[chosen] : null;
            object?[] arguments = member.DrawArguments(seed, new Draw(seed));
            yield return new DerivableCall(
                () =>
                {
                    object? receiver = member.HasReceiver ? outside ?? RandomObjects.Make(member.Subject, chosen) : null;
                    if (receiver is not null && receiver.GetType() != member.Info.ReflectedType) return null;
                    return member.Ask(receiver, isMadeInside ? member.DrawArguments(seed, new Draw(seed)) : arguments);
                },
                arguments);
        }
    }
}
