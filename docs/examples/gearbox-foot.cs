#!/usr/bin/env dotnet
#:project ../../src/Fastening/Fastening.csproj
#:include GearboxFoot/*.cs
#:include PumpCover/ISheetWriter.cs
#:include PumpCover/PlainTextWriter.cs
#:include PumpCover/Show.cs
#:include PumpCover/WorkedSteps.cs

// The gearbox foot of a wind-driven pump, on cast iron: a snug torque, then a rotation. The case is invented.
//
//   dotnet run docs/examples/gearbox-foot.cs                                     from the root of the repository
//
// Exit codes: 0 the joint keeps its required clamp force; 4 it does not, while its stiffness is known no better than stated.

using System.Globalization;
using System.Text;
using GearboxFoot;
using PumpCover;

CultureInfo.CurrentCulture = CultureInfo.InvariantCulture;
Console.OutputEncoding = new UTF8Encoding(encoderShouldEmitUTF8Identifier: false);
var joint = new FootJoint();
var plan = new FootPlan(joint, joint.StiffnessError);
var console = new PlainTextWriter();
new FootSheet(plan, console).Write();
Console.Write(console);
return plan.KeepsRequiredClamp ? 0 : 4;
