namespace System.Runtime.CompilerServices;

// The compiler marks required members with it.
[AttributeUsage(AttributeTargets.All, AllowMultiple = true)]
internal sealed class CompilerFeatureRequiredAttribute(string featureName) : Attribute
{
    public string FeatureName { get; } = featureName;

    public bool IsOptional { get; init; }
}
