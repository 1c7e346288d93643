/**
 * A box made into its blank. Sizes are taken as `dimensions` says; what leaves no sheet is told by the key that would have to
 * change.
 */
import type { Brake } from "../brake/brake.ts";
import { takenAtBend } from "../part/bendSetback.ts";
import type { Bend, Part, Turn } from "../part/part.ts";
import {
  type Box,
  type BoxSide,
  boxPattern,
  type Corners,
  SIDES,
  tabCorners,
} from "../pattern/boxPattern.ts";
import type { Built } from "../pattern/panels.ts";
import type { Link } from "../pattern/sectionPattern.ts";
import type { Mm } from "../units/quantity.ts";
import { formAll, type WrittenBend } from "./formAll.ts";
import { usualEdge } from "./readFlats.ts";
import { lengthAt, type Reading, refuse, sayLimit } from "./reading.ts";
import type { WholeFile } from "./wholeSchema.ts";

export interface BuiltPart {
  /** Sheet and all bends, in the order of their numbers. */
  readonly formed: Part;
  readonly built: Built;
}

/** How far apart two lips are cut that would meet, unless the job says otherwise. */
const LIP_GAP_MM: Mm = 0.5;

type BoxFile = NonNullable<WholeFile["part"]["box"]>;
type WallFile = Exclude<NonNullable<BoxFile["walls"]["left"]>, number | string>;

/** What a bend takes off a dimension that it ends. */
export function takenBy(
  { dimensions = "outside", closedBends = "corner" }: WholeFile["part"],
  thicknessMm: Mm,
): (bend: Bend) => Mm {
  return (bend) => takenAtBend({ ...bend, thicknessMm }, usualEdge(dimensions), closedBends);
}

/** The blank of a box, or undefined with the problems noted. */
export function readBox(
  reading: Reading,
  file: WholeFile,
  box: BoxFile,
  brake: Brake,
): BuiltPart | undefined {
  const before = reading.problems.length;
  const at = "part.box";
  const widthMm = lengthAt(reading, `${at}.width`, box.width, "above0");
  const depthMm = lengthAt(reading, `${at}.depth`, box.depth, "above0");
  const gapMm = box.gap === undefined ? LIP_GAP_MM : lengthAt(reading, `${at}.gap`, box.gap, "atLeast0");
  const walls = SIDES.flatMap((side) => {
    const wall = box.walls[side];
    return wall === undefined ? [] : [{ side, wall: asGroup(wall) }];
  });
  if (walls.length === 0) {
    refuse(reading, `${at}.walls`, box.walls, "at least one of left, right, front and back");
    return undefined;
  }
  const sizes = walls.map(({ side, wall }) => [
    lengthAt(reading, heightPath(box, side), wall.height, "above0"),
    ...(wall.lips ?? []).map((lip, i) =>
      lengthAt(reading, `${at}.walls.${side}.lips[${i}].size`, lip.size, "above0"),
    ),
  ]);
  const written = walls.flatMap(({ side, wall }) => wallBends(side, wall));
  const tabs = tabsOf(
    box,
    walls.map(({ side }) => side),
  );
  const formed = formAll(reading, file, [...written, ...tabs], brake);
  const corners = formed && readCorners(reading, box, formed.bends.slice(written.length), gapMm);
  if (!formed || !corners || reading.problems.length > before) return undefined;
  let used = 0;
  const links = Object.fromEntries(
    walls.map(({ side }, i) => [
      side,
      sizes[i]!.map((sizeMm): Link => ({ sizeMm, bend: formed.bends[used++]! })),
    ]),
  ) as Box["walls"];
  const { thicknessMm } = formed;
  const taken = takenBy(file.part, thicknessMm);
  const result = boxPattern({ widthMm, depthMm, thicknessMm, walls: links, corners, gapMm, taken });
  if (result.ok) return { formed, built: result.built };
  noteBoxFault(reading, box, result.fault);
  return undefined;
}

function asGroup(wall: NonNullable<BoxFile["walls"]["left"]>): WallFile {
  return typeof wall === "object" ? wall : { height: wall };
}

function heightPath({ walls }: BoxFile, side: BoxSide): string {
  return `part.box.walls.${side}${typeof walls[side] === "object" ? ".height" : ""}`;
}

function wallBends(side: BoxSide, wall: WallFile): WrittenBend[] {
  const path = `part.box.walls.${side}`;
  const turn: Turn = wall.turn ?? "up";
  const other: Turn = turn === "up" ? "down" : "up";
  const { height: _, lips = [], turn: __, ...own } = wall;
  return [
    { path, bend: { ...own, angle: wall.angle ?? 90, turn } },
    ...lips.map(({ size: _size, turn: lipTurn, ...lip }, i) => ({
      path: `${path}.lips[${i}]`,
      // In is the way the wall itself turns.
      bend: { ...lip, angle: lip.angle ?? 90, turn: lipTurn === "out" ? other : turn },
    })),
  ];
}

/** The bends of tabs at the corners, each turning round its corner as its wall turns. */
function tabsOf({ corners, walls }: BoxFile, sides: readonly BoxSide[]): WrittenBend[] {
  if (typeof corners !== "object") return [];
  const { tab: _tab, on: _on, ...own } = corners;
  const standing = Object.fromEntries(sides.map((side) => [side, []])) as Box["walls"];
  return tabCorners(standing).map(({ side }) => {
    const wall = walls[side];
    const turn = (typeof wall === "object" ? wall.turn : undefined) ?? "up";
    return { path: "part.box.corners", bend: { ...own, angle: 90, turn } };
  });
}

/** How the corners are made; walls that aren't square meet nowhere. */
function readCorners(
  reading: Reading,
  { corners = "open", walls, gap }: BoxFile,
  tabBends: readonly Bend[],
  gapMm: Mm,
): Corners | undefined {
  if (corners === "open") return { kind: "open" };
  const slanted = SIDES.find((side) => {
    const wall = walls[side];
    return typeof wall === "object" && Number(wall.angle ?? 90) !== 90;
  });
  if (slanted !== undefined) {
    const found = typeof corners === "string" ? corners : "corners with tabs";
    refuse(reading, "part.box.corners", found, `"open", since the ${slanted} wall does not stand square`);
    return undefined;
  }
  const givenMm = gap === undefined ? 0 : gapMm;
  if (corners === "meet") return { kind: "meet", gapMm: givenMm };
  const sizeMm = lengthAt(reading, "part.box.corners.tab", corners.tab, "above0");
  return { kind: "tab", sizeMm, side: corners.on ?? "inside", gapMm: givenMm, bends: tabBends };
}

function noteBoxFault(
  reading: Reading,
  box: BoxFile,
  fault: Extract<ReturnType<typeof boxPattern>, { ok: false }>["fault"],
): void {
  const more = sayLimit(reading.units, "least");
  if (fault.kind === "bottom") {
    const limit = `longer than ${more(fault.leastMm)}, which the bends of its walls take up`;
    refuse(reading, `part.box.${fault.along}`, box[fault.along], limit);
  } else if (fault.kind === "tab") {
    const written = typeof box.corners === "object" ? box.corners.tab : undefined;
    refuse(
      reading,
      "part.box.corners.tab",
      written,
      `wider than ${more(fault.leastMm)}, which its bend takes up`,
    );
  } else {
    const wall = asGroup(box.walls[fault.side]!);
    const [path, written] =
      fault.link === 0
        ? [heightPath(box, fault.side), wall.height]
        : [`part.box.walls.${fault.side}.lips[${fault.link - 1}].size`, wall.lips?.[fault.link - 1]?.size];
    const allowed =
      fault.kind === "mitre"
        ? `less than ${sayLimit(reading.units, "most")(fault.mostMm)}, where the cuts at its two corners meet`
        : `larger than ${more(fault.leastMm)}, which its bends take up`;
    refuse(reading, path, written, allowed);
  }
}
