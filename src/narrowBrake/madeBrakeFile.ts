/**
 * The planned narrow brake as a job file has it, read off its assembly: clamp, bed, leaf with its handles, and a named piece of
 * the frame for everything else that a sheet could meet. Rated for the parts that it was designed for.
 * What stands beyond the ends of the bar (ears, bolts beyond the ends) is told with its stretch along the brake.
 */
import type { JobFile } from "../jobFile/schema.ts";
import { writtenAtLeast, writtenLength } from "../jobFile/writtenLength.ts";
import type { LengthUnit } from "../units/length.ts";
import type { Mm } from "../units/quantity.ts";
import type { NarrowBrake } from "./narrowBrake.ts";
import type { SheetToFold } from "./requirements.ts";
import { type Assembly, type Box, boxOfShape, pieceOf, rectangle, type Xy } from "./solid.ts";

/** A piece of the frame by name, in the section frame. */
export interface FramePiece {
  readonly name: string;
  /** Corners, [x, y] or [x, y, radius]. */
  readonly profile: readonly (readonly Mm[])[];
}

/**
 * The brake of a design that has a plan.
 * @throws RangeError where there is no plan
 */
export function madeBrakeFile(design: NarrowBrake, units: LengthUnit): JobFile["brake"] {
  const { plan, requirements } = design;
  if (plan === null) throw new RangeError("there is no plan to make a brake from");
  const { assembly } = plan;
  const { parts } = requirements;
  // Rated for what it was designed for: the sheet that takes the most force, the longest part.
  const force = ({ metal, thicknessMm }: SheetToFold) => metal.yieldMpa * thicknessMm ** 2;
  const strongest = parts.reduce((most, part) => (force(part) > force(most) ? part : most));
  const inUnit = (lengthMm: Mm) => writtenLength(lengthMm, units);
  const written = (profile: readonly (readonly Mm[])[]) => profile.map((corner) => corner.map(inUnit));
  const box = (id: string) => boxOfShape(pieceOf(assembly, id).shape);
  const [bar, holder] = [box("bar"), box("holder")];
  return {
    name: "shop-made narrow brake",
    clamp: {
      type: "bar",
      thickness: inUnit(bar.max[1] - bar.min[1]),
      depth: inUnit(bar.max[0] - bar.min[0]),
      noseRadius: inUnit(requirements.noseRadiusMm),
      noseAngle: 90 - requirements.frontBevelDeg,
      holderBack: inUnit(bar.max[0] - holder.max[0]),
      holderHeight: inUnit(holder.max[1] - holder.min[1]),
      holderDepth: inUnit(holder.max[0] - holder.min[0]),
    },
    bed: {
      profile: written(
        bedProfile(
          box("cap"),
          box("spine"),
          assembly.pieces.some(({ id }) => id === "leg") ? box("leg") : undefined,
        ),
      ),
    },
    leaf: { profile: written(leafProfile(box("leaf"), box("handle-1"), bar)), swing: assembly.swing },
    frame: [
      ...frameOf(assembly).map(({ name, profile }) => ({ name, profile: written(profile) })),
      ...assembly.vise.bodies.map(({ name, profile }) => ({ name, profile: written(profile) })),
      ...stretchesOf(assembly).map(({ name, profile, along }) => ({
        name,
        profile: written(profile),
        along: along.map((w) => inUnit(w)),
      })),
    ],
    length: inUnit(box("leaf").max[2] - box("leaf").min[2]),
    lift: inUnit(requirements.liftMm),
    openEnds: false,
    setback: "auto",
    rated: {
      thickness: writtenAtLeast(strongest.thicknessMm, units),
      length: writtenAtLeast(Math.max(...parts.map(({ lengthMm }) => lengthMm)), units),
      yield: strongest.metal.yieldMpa,
    },
  };
}

/**
 * What stands in the way of a sheet beside clamp, bed and leaf, for a part within the brake's length. Rods, rail and heel strip that
 * stand beyond the ends of the part, or can be taken out, are not among it.
 */
function frameOf({ pieces }: Pick<Assembly, "pieces">): FramePiece[] {
  const bar = pieces.find(({ id }) => id === "bar")!;
  const { min, max } = boxOfShape(bar.shape);
  const within = pieces.filter(({ shape, turnsWithLeaf }) => {
    const box = boxOfShape(shape);
    return !turnsWithLeaf && box.min[2] < max[2] && box.max[2] > min[2];
  });
  const inside = pieces.some(({ id }) => id === "rail");
  const named = (name: string) => within.filter((piece) => piece.name === name);
  const around = (name: string, from: readonly string[]): FramePiece[] => {
    const boxes = from.flatMap(named).map(({ shape }) => boxOfShape(shape));
    if (boxes.length === 0) return [];
    const least = (i: 0 | 1) => Math.min(...boxes.map((one) => one.min[i]));
    const most = (i: 0 | 1) => Math.max(...boxes.map((one) => one.max[i]));
    return [{ name, profile: rectangle(least(0), least(1), most(0), most(1)) }];
  };
  return [
    ...around("hold-down bolts", ["hold-down bolt"]),
    ...around("washers and nuts", ["slotted washer", "hold-down nut"]),
    ...around("rib of the holder", ["rib of the holder"]),
    ...(inside
      ? [
          ...around("setback screws", ["setback screw", "lock nut"]),
          ...around("screw rail", ["screw rail"]),
          ...around("heel strip", ["heel strip"]),
        ]
      : []),
  ];
}

/**
 * What stands beside the bar: ears with all of their hinge, bolts, springs and rails beyond its ends. Each by its box, but for the ears,
 * with where it begins and ends from the left end of the leaf.
 */
function stretchesOf({
  pieces,
}: Pick<Assembly, "pieces">): (FramePiece & { readonly along: readonly [Mm, Mm] })[] {
  const at = (id: string) => boxOfShape(pieces.find((piece) => piece.id === id)!.shape);
  const [bar, leaf] = [at("bar"), at("leaf")];
  const beside = pieces.filter(({ shape, turnsWithLeaf }) => {
    const { min, max } = boxOfShape(shape);
    return !turnsWithLeaf && max[1] > 0 && (min[2] >= bar.max[2] || max[2] <= bar.min[2]);
  });
  return beside
    .filter(({ name }) => name !== "hinge pin")
    .map(({ name, shape }) => {
      const { min, max } = boxOfShape(shape);
      const ear = name === "bed ear";
      // An ear with the leaf's own ear beside it, and the pin through both.
      const [from, to] = [ear && min[2] > 0 ? leaf.max[2] : min[2], ear && min[2] < 0 ? leaf.min[2] : max[2]];
      return {
        name: ear ? "hinge ears" : name,
        profile: ear
          ? [
              [min[0], min[1]],
              [max[0], min[1]],
              [max[0], max[1], max[1]],
              [min[0], max[1]],
            ]
          : rectangle(min[0], min[1], max[0], max[1]),
        along: [from - leaf.min[2], to - leaf.min[2]] as const,
      };
    });
}

/** Cap, spine and back leg as one outline, from the front edge back. */
function bedProfile(cap: Box, spine: Box, leg: Box | undefined): Xy[] {
  const back: Xy[] = leg
    ? [
        [leg.min[0], leg.min[1]],
        [leg.max[0], leg.min[1]],
        [leg.max[0], cap.min[1]],
      ]
    : [[cap.min[0], cap.min[1]]];
  return [
    [cap.max[0], cap.max[1]],
    [cap.min[0], cap.max[1]],
    ...back,
    [spine.min[0], cap.min[1]],
    [spine.min[0], spine.min[1]],
    [spine.max[0], spine.min[1]],
    [spine.max[0], cap.min[1]],
    [cap.max[0], cap.min[1]],
  ];
}

/** The leaf at rest with its handles, which turn with it, unless they stand beyond the ends of the bar. */
function leafProfile(leaf: Box, handle: Box, bar: Box): Xy[] {
  if (handle.min[2] >= bar.max[2] || handle.max[2] <= bar.min[2])
    return rectangle(leaf.min[0], leaf.min[1], leaf.max[0], leaf.max[1]);
  const [faceX, handleX] = [leaf.max[0], handle.max[0]];
  return [
    [leaf.min[0], leaf.max[1]],
    [leaf.min[0], leaf.min[1]],
    [faceX, leaf.min[1]],
    [faceX, handle.min[1]],
    [handleX, handle.min[1]],
    [handleX, handle.max[1]],
    [faceX, handle.max[1]],
    [faceX, leaf.max[1]],
  ];
}
