using System.Reflection;
using Xunit.Sdk;

namespace Fastening.Published.Tests;

/// <summary>Feeds a test with every value of the tables of its own source.</summary>
[AttributeUsage(AttributeTargets.Method)]
public sealed class PublishedValuesAttribute : DataAttribute
{
    public override IEnumerable<object[]> GetData(MethodInfo testMethod) =>
        ((PublishedSource)Activator.CreateInstance(testMethod.ReflectedType!)!).Tables
            .SelectMany(table => table.Values).Select(value => new object[] { value });
}
