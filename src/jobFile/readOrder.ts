/**
 * A bend order of the user's own: every bend once, each with the end that lies in the throat. A bend may be begun in an
 * earlier step, left part way (`to`), and finished with the same end in the throat.
 * Bends count from 1 in the file and from 0 in the job.
 */

import type { Brake } from "../brake/brake.ts";
import { stagesOf } from "../motion/stages.ts";
import type { Part } from "../part/part.ts";
import type { OrderStep } from "./job.ts";
import { angleAt, type Reading, refuse } from "./reading.ts";
import type { JobFile } from "./schema.ts";

type OrderFile = NonNullable<JobFile["order"]>;

/** The order, or undefined with the problems noted. */
export function readOrder(
  reading: Reading,
  file: OrderFile,
  bends: number,
): readonly OrderStep[] | undefined {
  const before = reading.problems.length;
  const finishing = file.filter(({ to }) => to === undefined);
  if (finishing.length !== bends || file.length > 2 * bends) {
    return noOrder(
      reading,
      "order",
      file,
      `a list of ${bends} steps, each bend once, and before them those that only begin a bend`,
    );
  }
  const finished = new Set<number>();
  const begun = new Map<number, OrderFile[number]["clamped"]>();
  const order = file.map(({ bend, clamped, to }, i): OrderStep => {
    const path = `order[${i}]`;
    if (bend < 1 || bend > bends)
      noOrder(reading, `${path}.bend`, bend, `the number of a bend, from 1 to ${bends}`);
    else if (finished.has(bend))
      noOrder(reading, `${path}.bend`, bend, "a bend that no earlier step has made");
    else if (to !== undefined && begun.has(bend))
      noOrder(reading, `${path}.bend`, bend, "a bend that no earlier step has begun");
    if (begun.has(bend) && begun.get(bend) !== clamped) {
      noOrder(reading, `${path}.clamped`, clamped, `"${begun.get(bend)}", as where the bend was begun`);
    }
    if (to === undefined) {
      finished.add(bend);
      return { bend: bend - 1, clamped };
    }
    begun.set(bend, clamped);
    const allowed = "an angle in degrees, above 0 and less than the bend's own";
    const toDeg = angleAt(reading, `${path}.to`, to, { from: 0, to: 180, open: "both", allowed });
    return { bend: bend - 1, clamped, toDeg };
  });
  return reading.problems.length === before ? order : undefined;
}

/** Notes where a bend of the order can't be left at the angle asked for. */
export function checkBegun(
  reading: Reading,
  file: OrderFile,
  {
    part,
    brake,
    order,
  }: { readonly part: Part; readonly brake: Brake; readonly order: readonly OrderStep[] },
): void {
  order.forEach(({ bend, toDeg }, i) => {
    const { angleDeg, hem } = part.bends[bend]!;
    if (toDeg !== undefined && hem)
      noOrder(reading, `order[${i}].to`, file[i]?.to, "left out, since a hem has its two strokes of itself");
    if (toDeg === undefined || toDeg < angleDeg) return;
    noOrder(reading, `order[${i}].to`, file[i]?.to, `less than the bend's own ${angleDeg} degrees`);
  });
  if (reading.problems.length > 0) return;
  try {
    stagesOf(part, brake, order);
  } catch (fault) {
    if (!(fault instanceof RangeError)) throw fault;
    noOrder(reading, "order", file, `steps that leave sheet beside every bend (${fault.message})`);
  }
}

function noOrder(reading: Reading, path: string, found: unknown, allowed: string): undefined {
  refuse(reading, path, found, allowed);
}
