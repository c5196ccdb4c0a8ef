package shotwright.layout;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.data.Offset.offset;

import java.util.ArrayList;
import java.util.List;
import shotwright.finding.Finding;
import shotwright.finding.Severity;
import shotwright.geom.Transform;
import shotwright.geom.Vec2;
import shotwright.geom.Vec3;
import shotwright.layout.FeedSegment.Kind;
import shotwright.layout.align.DowelPlan;
import shotwright.layout.cavity.WallRay;
import shotwright.layout.runner.FeedPlan;
import shotwright.layout.strength.MetalPlan;
import shotwright.mesh.Bvh;
import shotwright.mesh.TriMesh;
import shotwright.region.Region;

/** What must hold of every layout without a stop finding, whatever the part. */
final class Sound {
    private final LayoutInput in;
    private final LayoutResult r;
    private final List<Region> outlines = new ArrayList<>();
    private final List<TriMesh> parts = new ArrayList<>();

    private Sound(LayoutInput in, LayoutResult r) {
        this.in = in;
        this.r = r;
        for (Cavity c : r.cavities()) {
            TriMesh m = in.part().mesh().transform(c.place());
            parts.add(m);
            outlines.add(outline(c.place()));
        }
    }

    private Region outline(Transform place) {
        List<Region> pieces = new ArrayList<>();
        for (List<Vec2> ring : in.part().shadow().exteriors())
            pieces.add(
                    Region.of(ring.stream().map(p -> place.apply(p.atZ(0)).xy()).toList()));
        return Region.unionOf(pieces);
    }

    static void check(LayoutInput in, LayoutResult r) {
        Sound s = new Sound(in, r);
        assertThat(r.findings().stream()
                        .filter(f -> f.severity() == Severity.STOP)
                        .map(Finding::text))
                .isEmpty();
        s.cavitiesInsideTheBlock();
        s.feedIsConnected();
        s.gatesOpenIntoTheirCavity();
        s.ventsEndAtTheEdge();
        s.nothingOverlaps();
        s.saysEverything();
        assertThat(r.dowels()).hasSize(2);
        assertThat(DowelPlan.closesWrongWayRound(r.dowels())).isFalse();
        assertThat(r.pry()).isNotEmpty();
    }

    private void cavitiesInsideTheBlock() {
        Block b = r.block();
        Region inner = Region.rectangle(
                new Vec2(-b.widthMm() / 2 + MetalPlan.EDGE_MM - 1e-6, -b.heightMm() / 2 + MetalPlan.EDGE_MM - 1e-6),
                new Vec2(b.widthMm() / 2 - MetalPlan.EDGE_MM + 1e-6, b.heightMm() / 2 - MetalPlan.EDGE_MM + 1e-6));
        for (int i = 0; i < parts.size(); i++) {
            assertThat(inner.contains(outlines.get(i)))
                    .as("cavity %s inside", i + 1)
                    .isTrue();
            assertThat(parts.get(i).box().max().z()).isLessThan(b.thicknessAMm() - MetalPlan.FLOOR_MM + 1e-6);
            assertThat(parts.get(i).box().min().z()).isGreaterThan(-b.thicknessBMm() + MetalPlan.FLOOR_MM - 1e-6);
            for (int j = 0; j < i; j++)
                assertThat(outlines.get(i).distance(outlines.get(j))).isGreaterThan(MetalPlan.BETWEEN_MM - 0.2);
        }
    }

    private void feedIsConnected() {
        assertThat(r.feed().getFirst().fromMm()).isEqualTo(r.nozzleMm());
        for (FeedSegment f : r.feed()) {
            assertThat(f.lengthMm()).isPositive();
            if (f.parent() == 0) continue;
            assertThat(f.parent()).isLessThan(f.number());
            assertThat(f.fromMm().distance(r.feed().get(f.parent() - 1).toMm())).isLessThan(1e-9);
        }
        for (Cavity c : r.cavities())
            assertThat(r.feed().stream().filter(f -> f.kind() == Kind.GATE && f.cavity() == c.number()))
                    .hasSize(1);
    }

    /** Half way down the gate's depth its end lies in plastic and its start does not. */
    private void gatesOpenIntoTheirCavity() {
        for (FeedSegment f : r.feed()) {
            if (f.kind() != Kind.GATE) continue;
            Half half = f.half();
            assertThat(half).isNotNull();
            if (half == null) continue;
            boolean standing = f.fromMm().xy().distance(f.toMm().xy()) < 1e-9;
            Vec3 down = standing ? Vec3.ZERO : new Vec3(0, 0, half.sign() * f.to().depthMm() / 2);
            TriMesh part = parts.get(f.cavity() - 1);
            assertThat(inside(part, f.toMm().plus(down)))
                    .as("end of gate %s", f.cavity())
                    .isTrue();
            assertThat(inside(part, f.fromMm().plus(down)))
                    .as("start of gate %s", f.cavity())
                    .isFalse();
        }
    }

    private static boolean inside(TriMesh part, Vec3 p) {
        double low = part.box().min().z() - 1;
        double[] pieces = new double[32];
        int n = new WallRay(Bvh.of(part)).pieces(new Vec3(p.x(), p.y(), low), Vec3.Z, 1e3, pieces);
        for (int i = 0; i < n; i++) {
            if (p.z() - low >= pieces[2 * i] - 1e-6 && p.z() - low <= pieces[2 * i + 1] + 1e-6) return true;
        }
        return false;
    }

    private void ventsEndAtTheEdge() {
        Block b = r.block();
        assertThat(r.vents()).isNotEmpty();
        for (Vent v : r.vents()) {
            Vec2 end = v.atMm().xy().plus(v.out().times(v.landMm() + v.channelLengthMm()));
            double beside = Math.min(b.widthMm() / 2 - Math.abs(end.x()), b.heightMm() / 2 - Math.abs(end.y()));
            assertThat(beside).isCloseTo(0, offset(1e-6));
            assertThat(v.depthMm()).isLessThanOrEqualTo(1.5 * in.melt().ventHighMm() + 1e-9);
        }
    }

    private void nothingOverlaps() {
        List<Region> solid = new ArrayList<>(outlines);
        for (DowelPlace d : r.dowels()) solid.add(Region.disc(d.atMm(), d.diameterMm() / 2, 32));
        for (ScrewPlace s : r.screws()) solid.add(Region.disc(s.atMm(), s.counterboreMm() / 2, 32));
        for (PryRelief p : r.pry()) solid.add(Region.rectangle(p.minMm(), p.maxMm()));
        for (int i = 0; i < solid.size(); i++) {
            for (int j = 0; j < i; j++)
                assertThat(solid.get(i).distance(solid.get(j))).isPositive();
        }
        for (Vent v : r.vents()) {
            Vec2 p = v.atMm().xy().plus(v.out().times(v.landMm() + 0.6));
            Region channel =
                    Ground.strip(p, v.atMm().xy().plus(v.out().times(v.landMm() + v.channelLengthMm())), v.widthMm());
            for (Region s : solid) assertThat(channel.distance(s)).as("vent").isPositive();
            for (FeedSegment f : r.feed())
                if (f.kind() != Kind.COLD_SLUG)
                    assertThat(channel.distance(FeedPlan.footprint(f))).isPositive();
        }
        for (FeedSegment f : r.feed()) {
            if (f.kind() == Kind.GATE) continue;
            for (int i = r.cavities().size(); i < solid.size(); i++)
                assertThat(FeedPlan.footprint(f).distance(solid.get(i))).isPositive();
            for (int i = 0; i < r.cavities().size(); i++) {
                boolean direct = r.gates().getFirst().kind() == Gate.Kind.DIRECT;
                if (!direct)
                    assertThat(FeedPlan.footprint(f).distance(outlines.get(i))).isPositive();
            }
        }
    }

    private void saysEverything() {
        assertThat(r.decisions()).hasSizeGreaterThan(8);
        for (Decision d : r.decisions()) {
            assertThat(d.value()).isNotBlank();
            assertThat(d.reason() + d.value()).doesNotContain("NaN", "Infinity", "null");
        }
        for (Finding f : r.findings()) assertThat(f.text() + f.remedy()).doesNotContain("NaN", "Infinity", "null");
        assertThat(r.candidates()).isNotEmpty();
        assertThat(r.strength()).hasSizeGreaterThanOrEqualTo(3);
    }
}
