/**
 * The assembly of many narrow brakes held against what a welder, a machinist and a mechanical engineer would ask of it. Geometry by
 * slices on another library, strength worked out anew from the pieces' own sizes; no line of the designer's choosing or checking.
 * Formulas: statics; Shigley's tables A-20 and 9-6; VDI 2230 of 1986 for the scatter of torque (28 %).
 */
import { describe, expect, test } from "vitest";
import type { NarrowBrakePlan } from "../../src/narrowBrake/narrowBrake.ts";
import type { Named } from "./designs.ts";
import { overlaps, type PieceLike } from "./solidOverlap.ts";

const [HOT, COLD] = [250 / 1.67, 370 / 1.67];
const WELD = 0.3 * 482;
type Piece = PieceLike & { readonly item: number; readonly name: string };

function box({ shape }: PieceLike) {
  if ("profile" in shape) {
    const [xs, ys] = [shape.profile.map(([x]) => x), shape.profile.map(([, y]) => y)];
    return {
      x0: Math.min(...xs),
      x1: Math.max(...xs),
      y0: Math.min(...ys),
      y1: Math.max(...ys),
      w0: shape.from,
      w1: shape.to,
    };
  }
  const r = shape.diameter / 2;
  const side = (i: 0 | 1 | 2) => {
    const along = Math.abs(shape.to[i] - shape.from[i]) > 1e-9;
    return [
      Math.min(shape.from[i], shape.to[i]) - (along ? 0 : r),
      Math.max(shape.from[i], shape.to[i]) + (along ? 0 : r),
    ] as const;
  };
  const [x, y, w] = [side(0), side(1), side(2)];
  return { x0: x[0], x1: x[1], y0: y[0], y1: y[1], w0: w[0], w1: w[1] };
}

const planOf = (of: Named) => of.design.plan as NarrowBrakePlan;
const piecesOf = (of: Named) => planOf(of).assembly.pieces as readonly Piece[];
const one = (pieces: readonly Piece[], id: string) => pieces.find((piece) => piece.id === id)!;
const named = (pieces: readonly Piece[], name: string) => pieces.filter((piece) => piece.name === name);

/** Registers what must hold of each of some designs, with the leaf turned in steps of so many degrees. */
export function assemblyTruths(designs: readonly Named[], stepDeg: number): void {
  describe.each(designs.filter(({ design }) => design.plan))("$name", (of) => {
    const plan = planOf(of);
    const pieces = piecesOf(of);
    const { requirements } = of.design;
    const [part] = requirements.parts as [(typeof requirements.parts)[number]];
    const at = (id: string) => box(one(pieces, id));

    test("no two unjoined pieces overlap, leaf from rest to full swing", () => {
      const found: string[] = [];
      for (let deg = 0; deg <= plan.assembly.swing; deg += stepDeg) found.push(...overlaps(pieces, deg));
      expect(found).toEqual([]);
      expect(plan.assembly.swing).toBeGreaterThanOrEqual(part.overbendDeg);
    });

    test("every joint names pieces that are there, and they touch", () => {
      for (const piece of pieces) {
        for (const id of [...piece.weldedTo, ...piece.boltedTo]) {
          const [a, b] = [box(piece), box(one(pieces, id))];
          const apart = Math.max(
            a.x0 - b.x1,
            b.x0 - a.x1,
            a.y0 - b.y1,
            b.y0 - a.y1,
            a.w0 - b.w1,
            b.w0 - a.w1,
          );
          expect(apart, `${piece.id} and ${id}`).toBeLessThan(0.05);
        }
      }
    });

    test("holes lie in metal, one and a half diameters from their middle to an edge or with a reason", () => {
      for (const { id, shape, holes } of pieces) {
        if (!("profile" in shape)) {
          expect(holes).toEqual([]);
          continue;
        }
        const b = box({ shape } as PieceLike);
        for (const { diameter, from, to, reason } of holes) {
          const axis = [0, 1, 2].find((i) => Math.abs(to[i]! - from[i]!) > 1e-9)!;
          const rims = [
            axis === 0 ? [] : [from[0] - b.x0, b.x1 - from[0]],
            axis === 1 ? [] : [from[1] - b.y0, b.y1 - from[1]],
            axis === 2 ? [] : [from[2] - b.w0, b.w1 - from[2]],
          ].flat();
          expect(Math.min(...rims), `${id}: inside`).toBeGreaterThan(diameter / 2);
          if (reason === undefined) {
            // Half a pitch of the drill's own error.
            expect(Math.min(...rims), `${id}: hole of ${diameter}`).toBeGreaterThanOrEqual(
              1.5 * diameter - 1e-6,
            );
          } else expect(reason.length).toBeGreaterThan(10 - 2);
        }
      }
    });

    test("ears stand close, in the pivot's line, and the bed's edge is a sharp corner on the pivot", () => {
      for (const side of ["left", "right"]) {
        const [leafEar, bedEar, pin] = [`leaf-ear-${side}`, `bed-ear-${side}`, `pin-${side}`].map((id) =>
          one(pieces, id),
        );
        const gap = Math.max(box(bedEar!).w0 - box(leafEar!).w1, box(leafEar!).w0 - box(bedEar!).w1);
        expect(gap).toBeGreaterThan(0);
        expect(gap).toBeLessThanOrEqual(0.5);
        expect(
          [...leafEar!.holes, ...bedEar!.holes].filter(({ from }) => from[0] === 0 && from[1] === 0),
        ).toHaveLength(2);
        expect(box(pin!).w1 - box(pin!).w0).toBeCloseTo(
          box(bedEar!).w1 - box(bedEar!).w0 + gap + box(leafEar!).w1 - box(leafEar!).w0,
          6,
        );
      }
      const cap = one(pieces, "cap").shape;
      expect("profile" in cap && cap.profile.some(([x, y]) => x === 0 && y === 0)).toBe(true);
      const leaf = one(pieces, "leaf").shape;
      expect("profile" in leaf && leaf.profile.some(([x, y]) => x === 0 && y === 0)).toBe(true);
    });

    test("bolts: about one every 6 in or beyond the sheet, behind its reach, and their pull within three quarters of proof", () => {
      const bolts = named(pieces, "hold-down bolt").map((bolt) => box(bolt));
      const ws = bolts.map(({ w0, w1 }) => (w0 + w1) / 2).sort((a, b) => a - b);
      const reach = at("bar").x1 - part.deepestClampedMm;
      const inside = Math.max(...ws.map(Math.abs)) < part.lengthMm / 2;
      if (inside) {
        expect(Math.max(...ws.slice(1).map((w, i) => w - ws[i]!))).toBeLessThanOrEqual(153);
        for (const bolt of bolts) expect(bolt.x1).toBeLessThan(reach);
      } else
        for (const bolt of bolts)
          expect(Math.min(Math.abs(bolt.w0), Math.abs(bolt.w1))).toBeGreaterThan(part.lengthMm / 2);
      const loads = foldingAnew(part, at("leaf").x1);
      const boltX = (bolts[0]!.x0 + bolts[0]!.x1) / 2;
      const front = at("bar").x1 - holeX(one(pieces, "holder"));
      const back = holeX(one(pieces, "holder")) - (at("bar").x0 + 5);
      const share = inside
        ? Math.max(ws[1]! - ws[0]!, (at("bar").w1 - at("bar").w0) / ws.length)
        : part.lengthMm / 2;
      const target = 1.4 * loads.clamp * share * (1 + front / back);
      expect(check(plan, "hold-down bolts", "pull").value / target).toBeCloseTo(1, 6);
      const d = bolts[0]!.x1 - bolts[0]!.x0;
      // Core by the root of a 60° thread: at most 0.8 of the full area, at least 0.65.
      expect(target).toBeLessThanOrEqual(0.75 * 590 * 0.8 * (Math.PI / 4) * d * d);
      // Bearing of washer on holder and threads in solid metal.
      const washer = one(pieces, "washer-1");
      const hole = one(pieces, "holder").holes.find(({ tapped, reason }) => !tapped && !reason)!.diameter;
      const side = box(washer).x1 - box(washer).x0;
      expect((1.28 * target) / (side * side - (Math.PI / 4) * hole * hole)).toBeLessThanOrEqual(HOT);
      expect(side).toBeGreaterThan(hole + 0.4 * d);
      expect(at("cap").y1 - at("cap").y0).toBeGreaterThanOrEqual(d - 1e-9);
      expect(boltX).toBeGreaterThan(at("cap").x0);
    });

    test("bar and holder hold the bolts' most pull: strips integrated anew", () => {
      const loads = foldingAnew(part, at("leaf").x1);
      const most = 1.4 * 1.28 * loads.clamp;
      const [bar, holder] = [at("bar"), at("holder")];
      const thick = bar.y1 - bar.y0;
      // The strip's fibre stress from its moment and a sum over its fibres, not from 6·M/t².
      expect(most * (bar.x1 - holder.x1)).toBeLessThanOrEqual(COLD * fibreModulus(1, thick) * 1.0001);
      const own = check(plan, "clamp bar", "bending").value;
      expect(own / ((most * (bar.x1 - holder.x1)) / fibreModulus(1, thick))).toBeCloseTo(1, 3);
    });

    test("pins bend over their true gap within half of their yield", () => {
      const loads = foldingAnew(part, at("leaf").x1);
      const force = (loads.leaf * part.lengthMm) / 2 + 200 * plan.sizes.people;
      const [leafEar, bedEar, pin] = [at("leaf-ear-right"), at("bed-ear-right"), at("pin-right")];
      const arm = (bedEar.w0 + bedEar.w1) / 2 - (leafEar.w0 + leafEar.w1) / 2;
      const d = pin.x1 - pin.x0;
      // Second moment of a circle summed over strips.
      const strips = Array.from({ length: 4000 }, (_, i) => ((i + 0.5) / 4000 - 0.5) * d);
      const inertia = strips.reduce(
        (sum, y) => sum + y * y * 2 * Math.sqrt((d / 2) ** 2 - y * y) * (d / 4000),
        0,
      );
      const stress = (force * arm * (d / 2)) / inertia;
      expect(stress).toBeLessThanOrEqual((370 / 2) * 1.001);
      expect(check(plan, "hinge pins", "bending").value / stress).toBeCloseTo(1, 3);
      expect(force / (d * (leafEar.w1 - leafEar.w0))).toBeLessThanOrEqual(HOT);
    });

    test("welds of the ears: summed point by point, under their limit", () => {
      const loads = foldingAnew(part, at("leaf").x1);
      const force = (loads.leaf * part.lengthMm) / 2 + 200 * plan.sizes.people;
      const leg = plan.sizes.weldMm;
      const [leafEar, bedEar, leaf, spine] = [
        at("leaf-ear-right"),
        at("bed-ear-right"),
        at("leaf"),
        at("spine"),
      ];
      const low = Math.max(spine.y0, bedEar.y0);
      const bed = [spine.x1, spine.x0].map((x) => ({ x, from: low, to: spine.y1 }));
      const off = bedEar.w0 - (leafEar.w0 + leafEar.w1) / 2;
      const worst = Math.max(
        ...[0, 45, 90, 135].map((deg) =>
          pointWeld(
            bed,
            leg,
            [force * Math.cos((deg * Math.PI) / 180), force * Math.sin((deg * Math.PI) / 180)],
            off,
          ),
        ),
      );
      expect(worst).toBeLessThanOrEqual(WELD * 1.001);
      expect(check(plan, "weld of the bed ears", "shear").value / worst).toBeCloseTo(1, 2);
      const hole = one(pieces, "leaf-ear-right").holes[0]!.diameter;
      const runs = [0, Math.min(leaf.x1, leafEar.x1)].map((x) => ({
        x,
        from: Math.max(leaf.y0, leafEar.y0),
        to: -hole / 2 - leg,
      }));
      const leafWeld = pointWeld(runs, leg, [200, force], (leafEar.w1 - leafEar.w0) / 2);
      expect(leafWeld).toBeLessThanOrEqual(WELD * 1.001);
      expect(check(plan, "weld of the leaf ears", "shear").value / leafWeld).toBeCloseTo(1, 2);
      // A fillet is no larger than three quarters of the thinner of what it joins, and one step.
      expect(leg).toBeLessThanOrEqual(
        0.75 * Math.min(bedEar.w1 - bedEar.w0, leafEar.w1 - leafEar.w0, spine.x1 - spine.x0) + 1.6,
      );
    });

    test("leaf and bed: moment and sag by double integration, within their limits", () => {
      const loads = foldingAnew(part, at("leaf").x1);
      const middle = (id: string) => (at(id).w0 + at(id).w1) / 2;
      const leafSpan = middle("leaf-ear-right") - middle("leaf-ear-left");
      const leaf = at("leaf");
      const deflected = integrated(
        loads.leaf,
        part.lengthMm,
        leafSpan,
        (200_000 * (leaf.x1 - leaf.x0) * (leaf.y1 - leaf.y0) ** 3) / 12,
      );
      const lever = Math.min(part.shortestFlangeMm, leaf.x1) / 2;
      const lost = (Math.atan(deflected.sag / lever) * 180) / Math.PI;
      expect(lost).toBeLessThanOrEqual(1);
      expect(check(plan, "leaf", "bend angle lost").value).toBeGreaterThanOrEqual(lost - 1e-3);
      expect(check(plan, "leaf", "bend angle lost").value).toBeLessThan(lost + 0.35);
      const cap = at("cap");
      const bedSpan = middle("bed-ear-right") - middle("bed-ear-left");
      const level = integrated(
        loads.leaf,
        part.lengthMm,
        bedSpan,
        (200_000 * (cap.y1 - cap.y0) * (cap.x1 - cap.x0) ** 3) / 12,
      );
      expect((Math.atan(level.sag / lever) * 180) / Math.PI).toBeLessThanOrEqual(1);
      expect(level.moment / (((cap.y1 - cap.y0) * (cap.x1 - cap.x0) ** 2) / 6)).toBeLessThanOrEqual(HOT);
    });

    test("handles, spine or feet take what the hands pull; the leaf's rest lies under its ear", () => {
      const turning = foldingAnew(part, at("leaf").x1).moment * part.lengthMm;
      expect(plan.places.reachMm * 200 * plan.sizes.people).toBeGreaterThanOrEqual(turning * 0.9999);
      expect(at("handle-1").x1).toBeGreaterThan(plan.places.reachMm);
      const d = at("handle-1").y1 - at("handle-1").y0;
      expect((200 * (plan.places.reachMm - at("leaf").x1)) / ((Math.PI / 32) * d ** 3)).toBeLessThanOrEqual(
        HOT,
      );
      expect(at("rest-right").x1).toBeCloseTo(at("leaf-ear-right").x0, 6);
      const { vise } = plan.assembly;
      if (vise.held === "vise") {
        expect(plan.weightKg).toBeLessThanOrEqual(20);
        // Everything that turns or hangs at rest stays over the jaws; the spine goes down between them.
        expect(at("leaf").y0).toBeGreaterThan(vise.topY + 5);
        expect(at("bolt-1").y0).toBeGreaterThan(vise.topY);
        expect(vise.topY - at("spine").y0).toBeCloseTo(vise.jawHeight!, 6);
      } else expect(named(pieces, "foot")).toHaveLength(2);
    });

    test("cut list: one line a number, count, length and weight as in the assembly", () => {
      for (const cut of plan.cutList) {
        const all = pieces.filter(({ item }) => item === cut.item);
        expect(all).toHaveLength(cut.count);
        for (const piece of all) {
          const b = box(piece);
          const extents = [b.x1 - b.x0, b.y1 - b.y0, b.w1 - b.w0];
          expect(
            Math.min(...extents.map((extent) => Math.abs(extent - cut.lengthMm))),
            cut.piece,
          ).toBeLessThan(1e-6);
        }
      }
      expect(new Set(pieces.map(({ item }) => item)).size).toBe(plan.cutList.length);
      expect(plan.weightKg).toBeCloseTo(
        plan.cutList.reduce((sum, { weightKg }) => sum + weightKg, 0),
        6,
      );
    });

    test("every check passes, names formula, source and pieces that are there", () => {
      const ids = new Set(pieces.map(({ id }) => id));
      for (const one of plan.checks) {
        expect(one.passes, one.check).toBe(true);
        expect(one.value).toBeLessThanOrEqual(one.limit);
        expect(one.formula.length).toBeGreaterThan(5);
        expect(one.source.length).toBeGreaterThan(5);
        expect(one.pieces.length).toBeGreaterThan(0);
        for (const id of one.pieces) expect(ids.has(id), `${one.check}: ${id}`).toBe(true);
      }
    });
  });
}

function check(plan: NarrowBrakePlan, member: string, begins: string) {
  return plan.checks.find((one) => one.member === member && one.check.startsWith(begins))!;
}

function holeX({ holes }: Piece): number {
  return holes.find(({ tapped, reason }) => !tapped && !reason)!.from[0];
}

/** Folding moment and forces per length from the sheet, load factor 1.25: a wide sheet yields through at its mean strength. */
function foldingAnew(
  part: {
    metal: { yieldMpa: number; ultimateMpa?: number };
    thicknessMm: number;
    shortestFlangeMm: number;
    shortestClampedMm: number;
  },
  faceMm: number,
) {
  const { yieldMpa, ultimateMpa = 1.5 * yieldMpa } = part.metal;
  const half = part.thicknessMm / 2;
  // Moment of a stress block summed over the thickness.
  const steps = 2000;
  const flow = ((yieldMpa + ultimateMpa) / 2) * (2 / Math.sqrt(3));
  const moment =
    1.25 *
    Array.from({ length: steps }, (_, i) => ((i + 0.5) / steps) * half * flow * (half / steps) * 2).reduce(
      (a, b) => a + b,
      0,
    );
  const leaf = moment / (Math.min(part.shortestFlangeMm, faceMm) / 2);
  return { moment, leaf, clamp: leaf + moment / (part.shortestClampedMm / 2) };
}

/** Section modulus of a strip from the sum of its fibres. */
function fibreModulus(wide: number, thick: number): number {
  const steps = 4000;
  const ys = Array.from({ length: steps }, (_, i) => ((i + 0.5) / steps - 0.5) * thick);
  return (ys.reduce((sum, y) => sum + y * y, 0) * wide * (thick / steps)) / (thick / 2);
}

/** Largest throat stress of upright runs of weld under a force at the origin, off their plane: many points, no formula for lines. */
function pointWeld(
  runs: readonly { x: number; from: number; to: number }[],
  leg: number,
  [fx, fy]: readonly [number, number],
  off: number,
): number {
  const steps = 400;
  const points = runs.flatMap(({ x, from, to }) =>
    Array.from({ length: steps }, (_, i) => ({
      x,
      y: from + ((i + 0.5) / steps) * (to - from),
      long: (to - from) / steps,
    })),
  );
  const total = points.reduce((sum, { long }) => sum + long, 0);
  const mean = (of: (p: (typeof points)[number]) => number) =>
    points.reduce((sum, p) => sum + p.long * of(p), 0) / total;
  const [cx, cy] = [mean(({ x }) => x), mean(({ y }) => y)];
  const [ixx, iyy] = [mean(({ x }) => (x - cx) ** 2) * total, mean(({ y }) => (y - cy) ** 2) * total];
  const turn = -cx * fy + cy * fx;
  // Runs are upright and of one height, so that x and y don't mix.
  return Math.max(
    ...points.map(({ x, y }) => {
      const [rx, ry] = [x - cx, y - cy];
      const sx = fx / total - (turn * ry) / (ixx + iyy);
      const sy = fy / total + (turn * rx) / (ixx + iyy);
      const sw = (fx * off * rx) / ixx + (fy * off * ry) / iyy;
      return Math.hypot(sx, sy, sw) / (leg * Math.SQRT1_2);
    }),
  );
}

/** Moment and sag in the middle of a beam loaded on its middle stretch, by sums. */
function integrated(load: number, loaded: number, span: number, ei: number) {
  const steps = 4000;
  const dx = span / steps;
  const reaction = (load * loaded) / 2;
  const start = (span - loaded) / 2;
  const moments = Array.from({ length: steps + 1 }, (_, i) => {
    const x = i * dx;
    const under = Math.min(Math.max(x - start, 0), loaded);
    return reaction * x - load * under * (x - start - under / 2) * (x > start ? 1 : 0);
  });
  let [slope, y, low] = [0, 0, 0];
  const ys = [0];
  for (let i = 1; i <= steps; i++) {
    slope += ((moments[i - 1]! + moments[i]!) / 2 / ei) * dx;
    y += slope * dx;
    ys.push(y);
  }
  const tilt = ys.at(-1)! / span;
  for (let i = 0; i <= steps; i++) low = Math.max(low, tilt * i * dx - ys[i]!);
  return { moment: Math.max(...moments), sag: low };
}
