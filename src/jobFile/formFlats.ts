/**
 * Flats from bend tangent line to bend tangent line, from what was measured: each dimension less what the bends at its ends
 * take of it, by the edge that it was measured to; one flat may be what an overall size leaves.
 */
import { takenAtBend } from "../part/bendSetback.ts";
import type { Bend } from "../part/part.ts";
import { restOfOverall } from "../part/restOfOverall.ts";
import type { Mm } from "../units/quantity.ts";
import { type Reading, refuse, sayLimit } from "./reading.ts";
import type { AskedPart } from "./readPart.ts";
import type { JobFile } from "./schema.ts";

/** What a flat may be shorter than its bends and still count as nothing: the rounding of inches to mm. */
const ROUNDING_MM: Mm = 1e-6;

/** What the flats are told about with. */
interface Told {
  readonly reading: Reading;
  readonly asked: AskedPart;
  readonly file: JobFile;
}

/** Tangent-to-tangent lengths, one more than bends, with the problems noted. */
export function formFlats(told: Told, bends: readonly Bend[]): readonly Mm[] {
  const { reading, asked, file } = told;
  const { thicknessMm, closedBends } = asked;
  const taken = (bend: Bend | undefined, edge: (typeof asked.flats)[number]["from"]): Mm =>
    bend === undefined ? 0 : takenAtBend({ ...bend, thicknessMm }, edge, bend.hem ? "tangent" : closedBends);
  const before = reading.problems.length;
  const flatsMm = asked.flats.map(({ sizeMm, from, to }, i) => {
    if (sizeMm === undefined) return 0;
    const takenMm = taken(bends[i - 1], from) + taken(bends[i], to);
    if (sizeMm - takenMm > ROUNDING_MM) return sizeMm - takenMm;
    const allowed = `longer than ${sayLimit(reading.units, "least")(takenMm)}, which its bends take up from mold line to bend tangent line`;
    const written = file.part.flats[i];
    const path = `part.flats[${i}]${typeof written === "object" ? ".size" : ""}`;
    return refuse(reading, path, typeof written === "object" ? written.size : written, allowed);
  });
  const rest = asked.flats.findIndex(({ sizeMm }) => sizeMm === undefined);
  if (reading.problems.length > before || asked.overall === undefined) return flatsMm;
  return withOverall(told, { flatsMm, bends, thicknessMm }, rest);
}

/** The flats with the rest of the overall size; where no flat is the rest, the overall size is held against the others. */
function withOverall(
  { reading, asked, file }: Told,
  section: { readonly flatsMm: readonly Mm[]; readonly bends: readonly Bend[]; readonly thicknessMm: Mm },
  rest: number,
): readonly Mm[] {
  const { sizeMm, along } = asked.overall!;
  if (rest < 0) {
    refuse(reading, "part.overall", file.part.overall, 'left out, or one of the flats "rest"');
    return section.flatsMm;
  }
  const restMm = restOfOverall(section, rest, sizeMm, along);
  if (restMm !== undefined) return section.flatsMm.map((flatMm, i) => (i === rest ? restMm : flatMm));
  const allowed = `larger than what the other flats and the bends reach along flat ${along + 1}, with flat ${rest + 1} not square to it`;
  refuse(reading, "part.overall.size", file.part.overall?.size, allowed);
  return section.flatsMm;
}
