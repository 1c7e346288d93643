/**
 * Every check of a planned narrow brake worked out anew from the pieces' own boxes and holes by sums and statics (statics.ts), held against
 * its limit and against what the plan says. Limits unless wished otherwise: yield over 1.67 (AISC, allowable stress), pins yield over 2, welds 0.30 of E70
 * (AWS D1.1, clause 2), bolts 0.75 of proof (ISO 898-1, SAE J429; areas of test/sources/threads.ts), scatter of torque 28 % (VDI 2230 of 1986).
 */
import { describe, expect, test } from "vitest";
import { LARGER_METRIC_AREAS, METRIC_THREADS, UNIFIED_AREAS } from "../sources/threads.ts";
import type { Named } from "./designs.ts";
import { boxOfPiece, named, one, piecesOf, planOf } from "./pieceBox.ts";
import {
  beam,
  flatModulus,
  type Rect,
  type Run,
  roundModulus,
  section,
  skewSection,
  torsion,
  type Vector,
  weldStress,
} from "./statics.ts";

const E = 200_000;
const WELD = 0.3 * 482;
const G = E / 2.58;
const SCATTER = 1.28;
const degrees = (rad: number) => (rad * 180) / Math.PI;

/** Registers the tests of one design. */
export function strengthTruths(of: Named): void {
  const plan = planOf(of);
  const pieces = piecesOf(of);
  const at = (id: string) => boxOfPiece(one(pieces, id));
  const has = (id: string) => pieces.some((piece) => piece.id === id);
  const { parts, safety, steel, coldFinished, give, vise: wished, handForceN: HAND } = of.design.requirements;
  const [HOT, COLD] = [steel.yieldMpa / safety.yield, coldFinished.yieldMpa / safety.yield];
  const { people, weldMm: leg, railWeldMm } = plan.sizes;
  const looked = new Set<string>();

  /** The plan's figure is the same within some per cent, and ours is within the limit. */
  const held = (member: string, begins: string, anew: number, limit: number, percent = 1) => {
    const found = plan.checks.find((check) => check.member === member && check.check.startsWith(begins));
    expect(found, `${member}: ${begins}`).toBeDefined();
    looked.add(`${found!.member}: ${found!.check}`);
    expect(anew, `${member}: ${begins}`).toBeLessThanOrEqual(limit * 1.002);
    expect(found!.limit / limit, `limit of ${member}: ${begins}`).toBeCloseTo(1, 2);
    expect(Math.abs(found!.value / anew - 1) * 100, `${member}: ${begins}, ${anew}`).toBeLessThan(percent);
  };

  const [leaf, cap, spine, bar, holder] = [at("leaf"), at("cap"), at("spine"), at("bar"), at("holder")];
  const [leafEar, bedEar, pin] = [at("leaf-ear-right"), at("bed-ear-right"), at("pin-right")];
  // Of several parts the worst of each load, over the longest of them.
  const each = parts.map((part) => ({ ...foldingAnew(part, leaf.x1, safety.load), long: part.lengthMm }));
  const most = (of: (one: (typeof each)[number]) => number) => Math.max(...each.map(of));
  const long = most((one) => one.long);
  const loads = {
    moment: most((one) => one.moment),
    leaf: most((one) => one.leaf),
    clamp: most((one) => one.clamp),
  };
  const turning = most((one) => one.moment * one.long);
  const force = (loads.leaf * long) / 2 + HAND * people;
  const lever = Math.min(...parts.map((part) => part.shortestFlangeMm), leaf.x1) / 2;
  const lost = (sag: number) => degrees(Math.atan(sag / lever));
  const twisted = (constant: number) => degrees((loads.moment * long ** 2) / (8 * G * constant));
  const middle = (id: string) => (at(id).w0 + at(id).w1) / 2;
  const torque = (loads.moment * long) / 2;

  describe("strength, anew", () => {
    const holes = one(pieces, "holder").holes.filter(({ tapped, reason }) => !tapped && !reason);
    const hole = holes[0]!;
    const ws = holes.map(({ from }) => from[2]).sort((a, b) => a - b);
    const inside = Math.max(...ws.map(Math.abs)) < long / 2;
    const front = bar.x1 - hole.from[0];
    const back = hole.from[0] - (bar.x0 + 5);
    const share = inside ? Math.max(ws[1]! - ws[0]!, (bar.w1 - bar.w0) / ws.length) : long / 2;
    const target = safety.bolt * loads.clamp * share * (1 + front / back);
    const pull = SCATTER * target;
    /** What nose and heel together pull on the row of bolts, along the bend. */
    const row = pull / share;
    const nose = (row * back) / (front + back);

    test("bar: strip in front of the holder, its give with shear, its thickness", () => {
      const out = bar.x1 - holder.x1;
      const thick = bar.y1 - bar.y0;
      held("clamp bar", "bending", (nose * out) / flatModulus(1, thick), COLD);
      const ei = (E * (flatModulus(1, thick) * thick)) / 2 / (1 - 0.29 ** 2);
      const steps = 4000;
      let [slope, gone] = [0, 0];
      for (let i = 0; i < steps; i++) {
        slope += ((loads.clamp * (out - ((i + 0.5) / steps) * out)) / ei) * (out / steps);
        gone += slope * (out / steps) + ((6 / 5) * loads.clamp * (out / steps)) / (G * thick);
      }
      held("clamp bar", "give", gone, give.noseMm);
      held("clamp bar", "thickness", thick, of.design.requirements.thickestByClearanceMm);
    });

    test("holder: across to its bolts, along between them, its sag, the rib's weld", () => {
      const high = holder.y1 - holder.y0;
      const washer = at("washer-1");
      const strip = Math.min(share, 2 * front + washer.w1 - washer.w0) - hole.diameter;
      const rib = has("rib") ? at("rib") : undefined;
      held("holder", "bending across", (nose * share * front) / flatModulus(strip, high), rib ? HOT : COLD);
      const both = section(rib ? [holder, rib] : [holder], "y");
      const [loaded, span] = inside ? [share, share] : [long, ws[1]! - ws[0]!];
      const between = beam(row, loaded, span, E * both.inertia);
      const end = (bar.w1 - bar.w0 - (ws.at(-1)! - ws[0]!)) / 2;
      const moment = Math.max(between.moment, inside ? (row * end ** 2) / 2 : 0);
      const net = 1 - hole.diameter / (holder.x1 - holder.x0);
      held("holder", "bending along", moment / both.modulus / net, rib ? HOT : COLD);
      held("holder", "bend angle lost", lost(between.sag / safety.bolt / SCATTER), give.angleDeg);
      if (rib) {
        const flow = shearFlow([rib], both, (row * loaded) / 2);
        held("weld of the rib", "shear", flow / 2 / 0.5 / (leg * Math.SQRT1_2), WELD);
      }
    });

    test("bolts, their threads and washers", () => {
      const bolt = at("bolt-1");
      const d = bolt.x1 - bolt.x0;
      const proof = of.design.requirements.units === "in" ? 586 : 580;
      held("hold-down bolts", "pull", target, 0.75 * proof * areaOf(d));
      held("bed cap", "length of thread", d, cap.y1 - cap.y0);
      const washer = at("washer-1");
      const side = washer.x1 - washer.x0;
      const washerHole = one(pieces, "washer-1").holes[0]!.diameter;
      // A slot from the holder's hole to the back edge bears nothing.
      const slot = washerHole * (side / 2 - hole.diameter / 2);
      const bearing = side ** 2 - (Math.PI / 4) * hole.diameter ** 2 - slot;
      held("slotted washers", "pressure", pull / bearing, HOT);
      // Half of the nut's ring against half of the holder's, carried by the front leg alone, as the slot cuts the other.
      const [inner, outer] = [0.625 * d, (hole.diameter + side) / 4];
      const arc = Array.from({ length: 2000 }, (_, i) => Math.sin(((i + 0.5) / 2000) * Math.PI));
      const off = arc.reduce((sum, sine) => sum + (outer - inner) * sine, 0) / arc.length;
      const bending = ((pull / 2) * off) / flatModulus((side - washerHole) / 2, washer.y1 - washer.y0);
      held("slotted washers", "bending", bending, HOT);
      // Pulled out, with the nuts back by the turns that the words tell, they open the clamp as far as it must.
      const { openingTurns, liftMm } = plan.places;
      const pitch = plan.sizes.bolt.pitchMm;
      expect(washer.y1 - washer.y0 + openingTurns * pitch).toBeGreaterThanOrEqual(liftMm - 1e-6);
      expect(bolt.y1 - at("nut-1").y1).toBeGreaterThanOrEqual((openingTurns + 2) * pitch - 1e-6);
      expect(openingTurns).toBeLessThanOrEqual(liftMm <= 25.4 ? 0.5 : 20);
      // The nut is too large for the holder's hole, so that it stops the holder where the washer is out.
      expect(at("nut-1").x1 - at("nut-1").x0).toBeGreaterThan(hole.diameter);
    });

    test("cap: across from nose to bolts, or to the spine", () => {
      const high = cap.y1 - cap.y0;
      const [bolt] = one(pieces, "cap").holes;
      const out = bar.x1 - bolt!.from[0];
      const strip = Math.min(share, 2 * out + 2 * bolt!.diameter) - bolt!.diameter;
      const anew = inside
        ? (nose * share * out) / flatModulus(strip, high)
        : (nose * (bar.x1 - spine.x1)) / flatModulus(1, high);
      held("bed cap", "bending across", anew, HOT);
    });

    test("bed between its hinges: up with its edge's twist, back, sag, the welds under the cap", () => {
      const span = middle("bed-ear-right") - middle("bed-ear-left");
      const under = has("leg") ? [spine, at("leg")] : [spine];
      const all = [cap, ...under];
      const [skewUp, skewBack] = [skewSection(all, "y"), skewSection(all, "x")];
      const up = beam(loads.leaf, long, span, E * skewUp.inertia);
      const pulled = inside ? undefined : beam(row, long, ws[1]! - ws[0]!, E * skewUp.inertia);
      const away = beam(loads.leaf, long, span, E * skewBack.inertia);
      held("bed", "bending back", away.moment / skewBack.modulus, HOT);
      const flats = all.map((flat) => torsion(flat.x1 - flat.x0, flat.y1 - flat.y0));
      const constant = flats.reduce((sum, flat) => sum + flat.constant, 0);
      const boltSag = pulled ? pulled.sag / safety.bolt / SCATTER : 0;
      const spineX = (spine.x0 + spine.x1) / 2;
      let perMm = loads.moment;
      const ofLost = (sag: number, tilt: number) => degrees(Math.atan(sag / lever) + tilt);
      if (has("leg")) {
        // The cap lies on spine and leg; the sheet's pull stands so far in front of the edge that it makes the folding moment too.
        const back = at("leg");
        const legX = (back.x0 + back.x1) / 2;
        const half = (spineX + legX) / 2;
        const pullX = loads.moment / loads.leaf;
        const onLeg = (loads.leaf * (pullX - spineX)) / (legX - spineX);
        const onSpine = loads.leaf - onLeg;
        const [front, behind] = [
          section([{ ...cap, x0: half }, spine], "y"),
          section([{ ...cap, x1: half }, back], "y"),
        ];
        const [rise, fall] = [
          beam(onSpine, long, span, E * front.inertia),
          beam(-onLeg, long, span, E * behind.inertia),
        ];
        const bolted = pulled ? pulled.moment / section(all, "y").modulus : 0;
        held(
          "bed",
          "bending up",
          Math.max(rise.moment / front.modulus, fall.moment / behind.modulus) + bolted,
          HOT,
        );
        const tilt = (rise.sag + fall.sag) / (spineX - legX);
        held(
          "bed",
          "bend angle lost at mid-length, leaf level",
          ofLost(rise.sag - tilt * spineX + boltSag, tilt),
          give.angleDeg,
          2,
        );
      } else {
        held("bed", "bending up", Math.max(up.moment, pulled?.moment ?? 0) / skewUp.modulus, HOT);
        // The edge's pull stands in front of the spine, which it twists.
        perMm += loads.leaf * -spineX;
        const tilt = (perMm * long ** 2) / (8 * G * constant);
        held(
          "bed",
          "bend angle lost at mid-length, leaf level",
          ofLost(up.sag - tilt * spineX + boltSag, tilt),
          give.angleDeg,
          3,
        );
      }
      held(
        "bed",
        "bend angle lost at mid-length, leaf upright",
        lost(away.sag) + twisted(constant),
        give.angleDeg,
        2,
      );
      const shears = flats.map(({ constant: own, shear }) => shear((((perMm * long) / 2) * own) / constant));
      held("bed", "twist", Math.max(...shears), HOT / Math.sqrt(3), 4);
      const shear = (loads.leaf * long) / 2;
      const flows = under.map((flat) => {
        const area = (flat.x1 - flat.x0) * (flat.y1 - flat.y0);
        const [offX, offY] = [
          (flat.x0 + flat.x1) / 2 - skewUp.middle.x,
          (flat.y0 + flat.y1) / 2 - skewUp.middle.y,
        ];
        return Math.max(
          (shear * area * Math.abs(offY)) / skewUp.inertia,
          (shear * area * Math.abs(offX)) / skewBack.inertia,
        );
      });
      const couple = turning / (cap.w1 - cap.w0) / (spine.x1 - spine.x0);
      held(
        "weld of cap and spine",
        "shear",
        Math.hypot(Math.max(...flows) / 2, couple) / 0.5 / (leg * Math.SQRT1_2),
        WELD,
      );
    });

    test("leaf between its hinges: bending less the handles' holes, sag, twist", () => {
      const span = middle("leaf-ear-right") - middle("leaf-ear-left");
      const [bored] = one(pieces, "leaf").holes;
      const [, y, w] = bored!.from;
      const slot = { ...leaf, y0: y - bored!.diameter / 2, y1: y + bored!.diameter / 2, less: true };
      const whole = section([leaf], "y");
      const bent = beam(loads.leaf, long, span, E * whole.inertia);
      const atHandle = bent.moment - (loads.leaf * Math.min(Math.abs(w), long / 2) ** 2) / 2;
      const stresses = [bent.moment / whole.modulus, atHandle / section([leaf, slot], "y").modulus];
      held("leaf", "bending", Math.max(...stresses), HOT);
      const { constant, shear } = torsion(leaf.x1 - leaf.x0, leaf.y1 - leaf.y0);
      held("leaf", "twist", shear(torque), HOT / Math.sqrt(3), 4);
      // A leaf that the part wraps under may lose half as much again, of what all may lose together.
      const { leafHighMaxMm } = of.design.requirements;
      const mayLose = give.angleDeg * (leafHighMaxMm === undefined ? 1 : 1.5);
      held("leaf", "bend angle lost", lost(bent.sag) + twisted(constant), mayLose, 2);
      if (leafHighMaxMm !== undefined) held("leaf", "height for clearance", leaf.y1 - leaf.y0, leafHighMaxMm);
    });

    test("pins over their true gap, ears, their eyes and their welds", () => {
      const d = pin.x1 - pin.x0;
      const arm = (bedEar.w0 + bedEar.w1) / 2 - (leafEar.w0 + leafEar.w1) / 2;
      held("hinge pins", "bending", (force * arm) / roundModulus(d), coldFinished.yieldMpa / safety.pin);
      held(
        "hinge pins",
        "shear",
        force / ((Math.PI / 4) * d ** 2),
        (0.577 * coldFinished.yieldMpa) / safety.pin,
      );
      const thick = leafEar.w1 - leafEar.w0;
      held("leaf ears", "pressure", force / (d * thick), HOT);
      const eye = leafEar.x1 - leafEar.x0 - one(pieces, "leaf-ear-right").holes[0]!.diameter;
      held("leaf ears", "pull", force / (eye * thick), HOT);
      // The force turns with the leaf, from down to level; its moment is taken about the middle of the ear in front of the spine.
      const ear = { x: spine.x1, y: (bedEar.y0 + bedEar.y1) / 2 };
      const turned = Array.from({ length: 91 }, (_, deg) => (deg * Math.PI) / 180).map(
        (rad) => force * Math.abs(ear.x * -Math.cos(rad) - ear.y * Math.sin(rad)),
      );
      const [earThick, earHigh] = [bedEar.w1 - bedEar.w0, bedEar.y1 - bedEar.y0];
      const bent = Math.max(...turned) / flatModulus(earThick, earHigh);
      held("bed ears", "bending", bent + force / (earThick * earHigh), HOT, 2);
      const bedRuns = [spine.x1, spine.x0].map(
        (x): Run => ({ from: [x, Math.max(spine.y0, bedEar.y0), 0], to: [x, spine.y1, 0] }),
      );
      const off = bedEar.w0 - (leafEar.w0 + leafEar.w1) / 2;
      const directions = [0, 45, 90, 135].map((deg) => (deg * Math.PI) / 180);
      const worst = directions.map((rad) =>
        weldStress(bedRuns, leg, [force * Math.cos(rad), force * Math.sin(rad), 0], [0, 0, off]),
      );
      held("weld of the bed ears", "shear", Math.max(...worst), WELD);
      const bore = one(pieces, "leaf-ear-right").holes[0]!.diameter;
      const leafRuns = [0, Math.min(leaf.x1, leafEar.x1)].map(
        (x): Run => ({ from: [x, Math.max(leaf.y0, leafEar.y0), 0], to: [x, -bore / 2 - leg, 0] }),
      );
      held(
        "weld of the leaf ears",
        "shear",
        weldStress(leafRuns, leg, [HAND, force, 0], [0, 0, thick / 2]),
        WELD,
      );
      // A fillet is no larger than three quarters of the thinner of what it joins, and one step.
      expect(leg).toBeLessThanOrEqual(0.75 * Math.min(earThick, thick, spine.x1 - spine.x0) + 1.6);
    });

    test("the leaf's weight on its rests, twice for a leaf that is dropped", () => {
      const weight = pieces
        .filter(({ turnsWithLeaf }) => turnsWithLeaf)
        .map((piece) => ({ b: boxOfPiece(piece), round: "diameter" in piece.shape }))
        .reduce(
          (sum, { b, round }) =>
            sum +
            9.81 *
              7850e-9 *
              (round ? Math.PI / 4 : 1) *
              ((b.x1 - b.x0) * (b.y1 - b.y0) * (b.w1 - b.w0)) *
              ((b.x0 + b.x1) / 2),
          0,
        );
      const rest = at("rest-right");
      const arm = (bedEar.w0 + bedEar.w1) / 2 - (leafEar.w0 + leafEar.w1) / 2;
      const push = weight / Math.abs((rest.y0 + rest.y1) / 2) / 2;
      held("leaf rests", "bending", (push * arm) / roundModulus(rest.x1 - rest.x0), COLD / 2, 6);
    });

    test("handles: length for the turning, bending, the ring of weld", () => {
      const { reachMm } = plan.places;
      const handle = at("handle-1");
      expect(reachMm * HAND * people).toBeGreaterThanOrEqual(turning * 0.9999);
      expect(handle.x1).toBeGreaterThan(reachMm);
      held("handles", "length", reachMm, people === 1 ? 1000 : 1500);
      const d = handle.y1 - handle.y0;
      held("handles", "bending", (HAND * (reachMm - leaf.x1)) / roundModulus(d), HOT);
      const rim = Array.from({ length: 60 }, (_, i): Vector => {
        const rad = (i * Math.PI) / 30;
        return [leaf.x1, (d / 2) * Math.cos(rad), (d / 2) * Math.sin(rad)];
      });
      const ring = rim.map((from, i): Run => ({ from, to: rim[(i + 1) % rim.length]! }));
      held("weld of the handles", "bending", weldStress(ring, leg, [0, HAND, 0], [reachMm, 0, 0]), WELD);
    });

    test("rail and its weld under the setback screws' push, the screws' core", () => {
      const rails = named(pieces, "screw rail");
      const [rail] = rails.map((piece) => boxOfPiece(piece));
      const push = most((one) => one.leaf * one.long);
      const tapped = rails.flatMap((piece) => piece.holes);
      held(
        "setback screws",
        "push",
        push / tapped.length / areaOf(tapped[0]!.diameter),
        (of.design.requirements.units === "in" ? 586 : 580) / 1.5,
      );
      // Thread as long as the screw is thick.
      expect(rail!.x1 - rail!.x0).toBeGreaterThanOrEqual(tapped[0]!.diameter - 1e-9);
      const long = rails.map((piece) => boxOfPiece(piece)).reduce((sum, { w0, w1 }) => sum + w1 - w0, 0);
      const high = tapped[0]!.from[1] - rail!.y0;
      held("screw rail", "bending", (push * high) / flatModulus(long, rail!.x1 - rail!.x0), HOT);
      const runs = rails.flatMap((piece): Run[] => {
        const { x0, x1, w0, w1 } = boxOfPiece(piece);
        return [x0, x1].map((x) => ({ from: [x, 0, w0], to: [x, 0, w1], share: rails.length > 1 ? 1 : 0.5 }));
      });
      const middleX = (rail!.x0 + rail!.x1) / 2;
      held(
        "weld of the rail",
        "shear",
        weldStress(runs, railWeldMm, [-push, 0, 0], [middleX, high, 0]),
        WELD,
      );
    });

    test("held in the vise, or on feet that keep it from tipping, wherever the handle stands", () => {
      // A hand square to the handle, from rest to full swing.
      const about = (x: number, y: number) =>
        Math.max(
          ...Array.from({ length: Math.floor(plan.assembly.swing) + 1 }, (_, deg) => {
            const [cos, sin] = [Math.cos((deg * Math.PI) / 180), Math.sin((deg * Math.PI) / 180)];
            const [handX, handY] = [plan.places.reachMm * cos, plan.places.reachMm * sin];
            return HAND * people * ((handX - x) * cos + (handY - y) * sin);
          }),
        );
      const middleX = (spine.x0 + spine.x1) / 2;
      const thick = spine.x1 - spine.x0;
      if (plan.assembly.vise.held === "vise") {
        const { topY, jawHeight = 0, jawWidth = 0 } = plan.assembly.vise;
        const moment = about(middleX, topY - jawHeight / 2);
        held("brake", "weight", plan.weightKg, 20);
        held("spine", "bending", moment / flatModulus(Math.min(jawWidth, spine.w1 - spine.w0), thick), HOT);
        // Pressure from nothing at one edge of the jaw to its most at the other: its force for this moment.
        const ys = Array.from({ length: 2000 }, (_, i) => (i + 0.5) / 2000);
        const arm =
          jawHeight * (ys.reduce((sum, y) => sum + y * y, 0) / ys.reduce((sum, y) => sum + y, 0) - 0.5);
        held("vise", "grip", moment / arm, wished.forceN);
        return;
      }
      const foot = at("foot-1");
      const wide = foot.w1 - foot.w0;
      const moment = about(middleX, spine.y0) / 2;
      held("spine", "bending over a foot", moment / flatModulus(wide, thick), HOT);
      const runs = [spine.x0, spine.x1].map((x): Run => ({ from: [x, 0, 0], to: [x, 0, wide] }));
      // The hand's moment as its force far off, which brings the force itself along.
      const hand = (HAND * people) / 2;
      const weld = weldStress(runs, leg, [0, hand, 0], [middleX + moment / hand, 0, wide / 2]);
      held("weld of the feet", "pull", weld, WELD, 6);
      const frontBolt = Math.max(...one(pieces, "foot-1").holes.map(({ from }) => from[0]));
      // Tips about its back end; the front bolt holds it down.
      const pull = about(foot.x0, foot.y0) / 2 / (frontBolt - foot.x0);
      const bolt = at("foot-bolt-1");
      const proof = of.design.requirements.units === "in" ? 586 : 580;
      held("foot bolts", "pull", pull, 0.75 * proof * areaOf(bolt.x1 - bolt.x0));
      const arm = Math.max(frontBolt - spine.x1, spine.x0 - foot.x0);
      held("feet", "bending", (pull * arm) / flatModulus(wide, foot.y1 - foot.y0), HOT);
    });

    test("every check of the plan was worked out here, but two that sum up or measure", () => {
      const told = plan.checks.map(({ member, check }) => `${member}: ${check}`);
      const forward = "leaf: angle that it can turn to, bar forward for another bend";
      expect(told.filter((name) => !looked.has(name) && name !== forward).sort()).toEqual([
        "brake: bend angle lost in all at mid-length",
        "leaf: angle that it can turn to",
      ]);
      const all = plan.checks.find(({ check }) => check.startsWith("bend angle lost in all"))!;
      const worst = (member: string) =>
        Math.max(
          ...plan.checks
            .filter((one) => one.member === member && one.check.startsWith("bend angle lost"))
            .map(({ value }) => value),
        );
      expect(all.value).toBeCloseTo(worst("leaf") + worst("bed") + worst("holder"), 9);
    });
  });
}

/** Stress area of a coarse thread as the standards' tables print it, mm². */
function areaOf(d: number): number {
  const metric = [...METRIC_THREADS, ...LARGER_METRIC_AREAS].find(([size]) => Math.abs(size - d) < 1e-6);
  if (metric) return metric[2];
  const unified = UNIFIED_AREAS.find(([size]) => Math.abs(size * 25.4 - d) < 1e-6);
  if (unified) return unified[2] * 25.4 ** 2;
  throw new Error(`no stress area for ${d} mm`);
}

/** Shear along the joint between some flats of a section and the rest: what their pull differs by over a millimetre of length, N/mm. */
function shearFlow(
  outer: readonly Rect[],
  { inertia, middle }: ReturnType<typeof section>,
  shear: number,
): number {
  const steps = 2000;
  return Math.abs(
    outer.reduce((sum, { x0, x1, y0, y1 }) => {
      const step = (y1 - y0) / steps;
      const ys = Array.from({ length: steps }, (_, i) => y0 + (i + 0.5) * step);
      return sum + ys.reduce((own, y) => own + ((shear * (y - middle)) / inertia) * (x1 - x0) * step, 0);
    }, 0),
  );
}

/** Folding moment and forces per length from the sheet: a wide sheet yields through at its mean strength. */
function foldingAnew(
  part: {
    metal: { yieldMpa: number; ultimateMpa?: number };
    thicknessMm: number;
    shortestFlangeMm: number;
    shortestClampedMm: number;
  },
  faceMm: number,
  loadFactor: number,
) {
  const { yieldMpa, ultimateMpa = 1.5 * yieldMpa } = part.metal;
  const half = part.thicknessMm / 2;
  // Moment of a stress block summed over the thickness.
  const steps = 2000;
  const flow = ((yieldMpa + ultimateMpa) / 2) * (2 / Math.sqrt(3));
  const moment =
    loadFactor *
    Array.from({ length: steps }, (_, i) => ((i + 0.5) / steps) * half * flow * (half / steps) * 2).reduce(
      (a, b) => a + b,
      0,
    );
  const leaf = moment / (Math.min(part.shortestFlangeMm, faceMm) / 2);
  return { moment, leaf, clamp: leaf + moment / (part.shortestClampedMm / 2) };
}
