using FsCheck.Xunit;
using UnitsNet;

namespace Fastening.Tests.Joints;

[Properties(Arbitrary = [typeof(SleeveDomain)], MaxTest = 200)]
public class JointDiagramTests
{
    [Property]
    public void Points_lie_on_the_lines_and_bolt_and_parts_deform_alike(AnySleeveJoint any)
    {
        Force load = any.PreloadForce * 0.6;
        JointDiagram diagram = any.Joint.DiagramAt(any.PreloadForce, load, any.Introduction);
        double size = diagram.PartsLine[1].Deformation.Meters;
        OnLine(diagram.BoltLine, diagram.Preload, size);
        OnLine(diagram.BoltLine, diagram.Bolt, size);
        OnLine(diagram.BoltLine, diagram.Separation, size);
        OnLine(diagram.PartsLine, diagram.Parts, size);
        Close.To(diagram.Bolt.Deformation.Meters, diagram.Parts.Deformation.Meters, 1e-11, size);
        Close.To(load.Newtons, (diagram.Bolt.Force - diagram.Parts.Force).Newtons, 1e-11, any.Preload);
        (double bolt, double clamp, _) = any.Ring.Under(load.Newtons);
        Close.To(bolt, diagram.Bolt.Force.Newtons, 1e-11, any.Preload);
        Close.To(clamp, diagram.Parts.Force.Newtons, 1e-11, any.Preload);
        Assert.Equal(0, diagram.Gap.Meters);
    }

    [Property]
    public void Lines_end_on_the_interference_and_the_separation_load(AnySleeveJoint any)
    {
        JointDiagram diagram = any.Joint.DiagramAt(any.PreloadForce, Force.Zero, any.Introduction);
        Close.To(any.Ring.Interference, diagram.PartsLine[1].Deformation.Meters);
        Assert.Equal(0, diagram.PartsLine[1].Force.Newtons);
        Assert.Equal(any.Preload, diagram.PartsLine[0].Force.Newtons);
        Assert.Equal(any.Joint.SeparationLoadAt(any.PreloadForce, any.Known).Newtons, diagram.Separation.Force.Newtons);
        Close.To(any.Ring.Interference, diagram.Separation.Deformation.Meters);
    }

    [Property]
    public void Beyond_separation_the_parts_stand_apart_by_what_the_ring_says(AnySleeveJoint any)
    {
        double load = 2.5 * any.Joint.SeparationLoadAt(any.PreloadForce, any.Known).Newtons;
        JointDiagram diagram = any.Joint.DiagramAt(any.PreloadForce, Force.FromNewtons(load), any.Introduction);
        Close.To(any.Ring.Under(load).Gap, diagram.Gap.Meters, 1e-10);
        Assert.Equal(0, diagram.Parts.Force.Newtons);
        Close.To(load, diagram.BoltLine[1].Force.Newtons);
    }

    private static void OnLine(IReadOnlyList<DiagramPoint> line, DiagramPoint point, double size)
    {
        (double x0, double y0, double x1, double y1) =
            (line[0].Deformation.Meters, line[0].Force.Newtons, line[1].Deformation.Meters, line[1].Force.Newtons);
        Close.To((x1 - x0) * (point.Force.Newtons - y0), (point.Deformation.Meters - x0) * (y1 - y0), 1e-11, size * Math.Abs(y1 - y0));
    }
}
