namespace Fastening;

/// <summary>A slip in writing a designation: the fault in words, and how to undo it in a text of small letters.</summary>
internal readonly record struct DesignationSlip(string Fault, Func<string, string> Undo);
