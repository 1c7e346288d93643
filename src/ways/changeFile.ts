/**
 * A job file with a change made to it, so that a way out can be run again, shown, applied and undone as a file.
 * A bend left open keeps its angle and dimensions in the file: what the hand has to do stands beside them.
 */

import type { Change } from "../jobFile/change.ts";
import { finishedPart, type Job } from "../jobFile/job.ts";
import { isRest } from "../jobFile/readFlats.ts";
import type { FlatFile, JobFile, ProfileFile } from "../jobFile/schema.ts";
import { writtenLength } from "../jobFile/writtenLength.ts";
import { type LengthUnit, parseLength } from "../units/length.ts";
import type { Mm } from "../units/quantity.ts";
import { fillerThickness } from "./filler.ts";
import { movedCutOuts } from "./movedCutOuts.ts";
import { relievedClamp } from "./relievedClamp.ts";

/** The file with all changes made, one after the other. `job` is what the unchanged file reads as. */
export function changedFile(file: JobFile, job: Job, changes: readonly Change[]): JobFile {
  return changes.reduce((so, change) => changedOnce(so, job, change), file);
}

function changedOnce(file: JobFile, job: Job, change: Change): JobFile {
  const { units, brake } = file;
  const inUnit = (lengthMm: Mm) => writtenLength(lengthMm, units);
  switch (change.kind) {
    case "flat": {
      const index = change.flat - 1;
      const longer = withFlats(file, job, (lengthMm, i) => (i === index ? lengthMm + change.byMm : lengthMm));
      const cutOuts = movedCutOuts(file, job, index, change.byMm);
      return cutOuts === undefined ? longer : { ...longer, part: { ...longer.part, cutOuts } };
    }
    case "angle":
      return withHandFinish(file, job, change.bend, change.toDeg);
    case "lift":
      return { ...file, brake: { ...brake, lift: inUnit(change.toMm) } };
    case "swing":
      return {
        ...file,
        brake: { ...brake, leaf: { ...brake.leaf, swing: Number(change.toDeg.toFixed(4)) } },
      };
    case "openEnds":
      return { ...file, brake: { ...brake, openEnds: true } };
    case "setback":
      return {
        ...file,
        brake: { ...brake, setback: change.toMm === "auto" ? "auto" : inUnit(change.toMm) },
      };
    case "topRadius":
      if (brake.clamp.type === "profile") return file;
      return { ...file, brake: { ...brake, clamp: { ...brake.clamp, topRadius: inUnit(change.toMm) } } };
    case "noseAngle": {
      if (brake.clamp.type === "profile") return file;
      const noseAngle = Number(change.toDeg.toFixed(4));
      return { ...file, brake: { ...brake, clamp: { ...brake.clamp, noseAngle } } };
    }
    case "relief": {
      const clamp = relievedClamp(brake.clamp, units, change.fromMm, change.toDeg);
      return { ...file, brake: { ...brake, clamp } };
    }
    case "thickness":
      if (brake.clamp.type !== "bar") return file;
      return { ...file, brake: { ...brake, clamp: { ...brake.clamp, thickness: inUnit(change.toMm) } } };
    case "leafFace": {
      const profile = cutOff(brake.leaf.profile, change.toMm, units);
      return { ...file, brake: { ...brake, leaf: { ...brake.leaf, profile } } };
    }
    case "order": {
      const { order: _, ...rest } = file;
      return change.order === null ? rest : { ...rest, order: change.order.map((step) => ({ ...step })) };
    }
  }
}

/**
 * Flats are written anew only where they change, so that the rest stays as the person wrote it. What was left of an overall
 * size becomes a length of its own then, since the size would no longer leave the same.
 */
function withFlats(file: JobFile, job: Job, to: (lengthMm: Mm, index: number) => Mm): JobFile {
  const { overall: _, ...part } = file.part;
  const flats = part.flats.map((written, i): FlatFile => {
    if (isRest(written)) {
      const size = writtenLength(to(job.part.flatsMm[i]!, i), file.units);
      return { size, from: "tangent", to: "tangent" };
    }
    const size = typeof written === "object" ? written.size : written;
    const lengthMm = parseLength(size, file.units);
    if (lengthMm === undefined) return written;
    const changed = to(lengthMm, i);
    if (changed === lengthMm) return written;
    const anew = writtenLength(changed, file.units);
    return typeof written === "object" ? { ...written, size: anew } : anew;
  });
  return { ...file, part: { ...part, flats } };
}

/** The bend left open; a stroke of the person's own order that would leave it there or further on is gone. */
function withHandFinish(file: JobFile, job: Job, bend: number, toDeg: number): JobFile {
  const fillerMm = fillerThickness(finishedPart(job), bend - 1);
  const others = (file.finishByHand ?? []).filter((one) => one.bend !== bend);
  const filler = fillerMm === undefined ? {} : { filler: writtenLength(fillerMm, file.units) };
  const one = { bend, to: Number(toDeg.toFixed(4)), ...filler };
  const order = file.order?.filter(
    (step) => step.bend !== bend || step.to === undefined || Number.parseFloat(String(step.to)) < toDeg,
  );
  return { ...file, ...(order && { order }), finishByHand: [...others, one] };
}

/** A profile cut off upright at x = `atMm`; what lies farther out is gone. */
function cutOff(profile: ProfileFile, atMm: Mm, units: LengthUnit): ProfileFile {
  const mm = (written: number | string | undefined): Mm => parseLength(written ?? 0, units) ?? 0;
  const kept: ProfileFile = [];
  profile.forEach((corner, i) => {
    const next = profile[(i + 1) % profile.length] ?? corner;
    const [x, y, nextX, nextY] = [mm(corner[0]), mm(corner[1]), mm(next[0]), mm(next[1])];
    if (x <= atMm) kept.push(corner);
    if (x <= atMm === nextX <= atMm || x === atMm || nextX === atMm) return;
    const crossing = y + ((nextY - y) * (atMm - x)) / (nextX - x);
    kept.push([writtenLength(atMm, units), writtenLength(crossing, units)]);
  });
  return kept;
}
