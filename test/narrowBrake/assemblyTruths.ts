/**
 * The assembly of many narrow brakes held against what a welder, a machinist and a mechanical engineer would ask of it. Geometry by
 * slices on another library, strength by strengthTruths.ts; no line of the designer's choosing or checking.
 */
import { describe, expect, test } from "vitest";
import type { Named } from "./designs.ts";
import { boxOfPiece as box, named, one, piecesOf, planOf } from "./pieceBox.ts";
import { movedBy, overlaps, type PieceLike } from "./solidOverlap.ts";
import { strengthTruths } from "./strengthTruths.ts";

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
      expect(plan.assembly.swing).toBeGreaterThanOrEqual(
        Math.max(...requirements.parts.flatMap(({ bends }) => bends.map(({ overbendDeg }) => overbendDeg))),
      );
    });

    test("each bend at its own nose setback: clamp and leaf clear each other as far as it asks", () => {
      const drawn = at("bar").x1;
      const clamp = new Set(["clamp bar", "holder", "rib of the holder", "bar screw"]);
      const shifted = (byX: number) =>
        pieces
          .filter(({ name, turnsWithLeaf }) => turnsWithLeaf || clamp.has(name))
          .map((piece) => (piece.turnsWithLeaf ? piece : movedBy(piece, byX)));
      for (const { overbendDeg, noseSetbackMm } of requirements.parts.flatMap(({ bends }) => bends)) {
        const set = shifted(-noseSetbackMm - drawn);
        for (const deg of [0, overbendDeg / 2, overbendDeg]) expect(overlaps(set, deg)).toEqual([]);
      }
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

    test("bolts: about one every 6 in behind the sheet's reach, or beyond the sheet", () => {
      const bolts = named(pieces, "hold-down bolt").map((bolt) => box(bolt));
      const ws = bolts.map(({ w0, w1 }) => (w0 + w1) / 2).sort((a, b) => a - b);
      const reach = at("bar").x1 - part.deepestClampedMm;
      if (Math.max(...ws.map(Math.abs)) < part.lengthMm / 2) {
        expect(Math.max(...ws.slice(1).map((w, i) => w - ws[i]!))).toBeLessThanOrEqual(153);
        for (const bolt of bolts) expect(bolt.x1).toBeLessThan(reach);
      } else
        for (const bolt of bolts)
          expect(Math.min(Math.abs(bolt.w0), Math.abs(bolt.w1))).toBeGreaterThan(part.lengthMm / 2);
    });

    test("how it is held: jaws below everything that turns or hangs, or two feet; the leaf's rest lies under its ear", () => {
      expect(at("rest-right").x1).toBeCloseTo(at("leaf-ear-right").x0, 6);
      const { vise } = plan.assembly;
      if (vise.held === "vise") {
        expect(plan.weightKg).toBeLessThanOrEqual(20);
        expect(at("leaf").y0).toBeGreaterThan(vise.topY + 5);
        expect(at("bolt-1").y0).toBeGreaterThan(vise.topY);
        expect(vise.topY - at("spine").y0).toBeCloseTo(vise.jawHeight!, 6);
      } else expect(named(pieces, "foot")).toHaveLength(2);
    });

    strengthTruths(of);

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
        expect(one.source).toMatch(
          /statics|Shigley|Gere|Timoshenko|Roark|Mott|ISO 898|middle third rule|common practice|virtual work|contact engine|the assembly|the checks above/u,
        );
        expect(one.pieces.length).toBeGreaterThan(0);
        for (const id of one.pieces) expect(ids.has(id), `${one.check}: ${id}`).toBe(true);
      }
    });
  });
}
