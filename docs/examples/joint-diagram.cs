#!/usr/bin/env dotnet
#:project ../../src/Fastening/Fastening.csproj

// The force–deformation diagram of a joint as a picture. The case is invented: an M16 bolt through a steel flange on an aluminium housing.
//
//   dotnet run docs/examples/joint-diagram.cs > docs/guide/joint-diagram.svg       from the root of the repository

using System.Globalization;
using System.Text;
using Fastening;
using UnitsNet;

CultureInfo.CurrentCulture = CultureInfo.InvariantCulture;
Console.OutputEncoding = new UTF8Encoding(encoderShouldEmitUTF8Identifier: false);

Length flange = Length.FromMillimeters(20), housing = Length.FromMillimeters(40);
ScrewThread thread = ScrewThread.Parse("M16");
var joint = new Joint(
    BoltCompliance.Vdi2230(thread, Length.FromMillimeters(80), Length.FromMillimeters(38), flange + housing, BoltHead.Hexagon, ElasticMaterial.Steel),
    ClampedStack.Vdi2230Cone(
        [new ClampedLayer(flange, ElasticMaterial.Steel), new ClampedLayer(housing, ElasticMaterial.WroughtAluminium)],
        bearingDiameter: Length.FromMillimeters(22), hole: Length.FromMillimeters(17.5), outerDiameter: Length.FromMillimeters(60), JointForm.ThroughBolt));
JointDiagram diagram = joint.DiagramAt(Force.FromKilonewtons(60), Force.FromKilonewtons(42), loadIntroductionFactor: 0.7);
Console.Write(new DiagramPicture(diagram).ToSvg());

/// <summary>Draws a diagram in plain SVG; deformation to the right in micrometres, force upwards in kilonewtons.</summary>
internal sealed class DiagramPicture(JointDiagram diagram)
{
    private const double Left = 96, Right = 700, Top = 24, Bottom = 400;

    private readonly double _widest = 1.28 * diagram.Separation.Deformation.Micrometers, _highest = 1.12 * diagram.Separation.Force.Kilonewtons;
    private readonly StringBuilder _svg = new();

    public string ToSvg()
    {
        _svg.Append("""
            <svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 720 460" font-family="sans-serif" font-size="14" role="img">
            <title>Force and deformation of bolt and clamped parts under an axial load</title>
            <rect width="720" height="460" fill="white"/>

            """);
        DrawAxes();
        Line(diagram.BoltLine[0], diagram.BoltLine[1], "#1f5fa8", "2.5");
        Line(diagram.PartsLine[0], diagram.PartsLine[1], "#b4540a", "2.5");
        Level(diagram.Bolt, "bolt");
        Level(diagram.Preload, "preload");
        Level(diagram.Parts, "clamp");
        DrawLoad();
        foreach (DiagramPoint point in new[] { diagram.Preload, diagram.Bolt, diagram.Parts, diagram.Separation }) Dot(point);
        Text(X(diagram.Separation) - 12, Y(diagram.Separation) + 5, "end", $"separation at {Kilonewtons(diagram.Separation)}");
        Text(X(diagram.Preload) * 0.52 + Left * 0.48 - 10, Y(diagram.Preload) * 0.52 + Bottom * 0.48 - 6, "end", "bolt");
        Text(X(diagram.PartsLine[1]) + 8, Bottom - 40, "start", "parts");
        Text((Left + Right) / 2, 444, "middle", $"deformation in µm (load introduction factor n = {diagram.LoadIntroductionFactor:0.0})");
        return _svg.Append("</svg>\n").ToString();
    }

    private void DrawAxes()
    {
        Stroke(Left, Bottom, Right, Bottom, "black", "1", "");
        Stroke(Left, Bottom, Left, Top, "black", "1", "");
        for (int micrometers = 50; micrometers < _widest; micrometers += 50)
        {
            double x = Left + (Right - Left) * micrometers / _widest;
            Stroke(x, Bottom, x, Bottom + 5, "black", "1", "");
            Text(x, Bottom + 20, "middle", $"{micrometers}");
        }
    }

    private void DrawLoad()
    {
        double x = X(diagram.Bolt), from = Y(diagram.Parts), to = Y(diagram.Bolt);
        Stroke(x, from, x, to, "#2f7d32", "2", "");
        Text(x + 8, (from + to) / 2 + 5, "start", $"axial load {(diagram.Bolt.Force - diagram.Parts.Force).Kilonewtons:0.0} kN");
    }

    private void Level(DiagramPoint point, string what)
    {
        Stroke(Left, Y(point), X(point), Y(point), "#888888", "1", " stroke-dasharray=\"4 4\"");
        Text(Left - 6, Y(point) - 3, "end", what);
        Text(Left - 6, Y(point) + 12, "end", Kilonewtons(point));
    }

    private void Line(DiagramPoint from, DiagramPoint to, string colour, string width) => Stroke(X(from), Y(from), X(to), Y(to), colour, width, "");

    private void Stroke(double x1, double y1, double x2, double y2, string colour, string width, string more) => _svg.Append(
        CultureInfo.InvariantCulture, $"<line x1=\"{x1:0.0}\" y1=\"{y1:0.0}\" x2=\"{x2:0.0}\" y2=\"{y2:0.0}\" stroke=\"{colour}\" stroke-width=\"{width}\"{more}/>\n");

    private void Dot(DiagramPoint point) =>
        _svg.Append(CultureInfo.InvariantCulture, $"<circle cx=\"{X(point):0.0}\" cy=\"{Y(point):0.0}\" r=\"4\" fill=\"black\"/>\n");

    private void Text(double x, double y, string anchor, string text) =>
        _svg.Append(CultureInfo.InvariantCulture, $"<text x=\"{x:0.0}\" y=\"{y:0.0}\" text-anchor=\"{anchor}\">{text}</text>\n");

    private static string Kilonewtons(DiagramPoint point) => $"{point.Force.Kilonewtons:0.0} kN";

    private double X(DiagramPoint point) => Left + (Right - Left) * point.Deformation.Micrometers / _widest;

    private double Y(DiagramPoint point) => Bottom - (Bottom - Top) * point.Force.Kilonewtons / _highest;
}
