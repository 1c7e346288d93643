/**
 * The way out that makes one bend in two strokes: begun, left part way while others are made, then finished. Which bend, which
 * end in the throat, and between which angles it may be left, closed in on and run again.
 * Bound: the angles are scanned in steps of SCAN_DEG; a window narrower than that may be missed, never invented.
 */
import { Machine } from "../contact/machine.ts";
import type { Trial } from "../jobFile/change.ts";
import type { Way } from "../jobFile/way.ts";
import type { Deg } from "../units/quantity.ts";
import { costOf } from "./cost.ts";
import { STEP, TOLERANCE } from "./family.ts";
import { outcomeOf } from "./folds.ts";
import { type Goal, reaches } from "./handling.ts";
import { type Begun, TwoStrokes } from "./twoStrokes.ts";

/** Parts of more bends have too many states for a look at every angle. */
const MOST_BENDS = 6;

const FIRST_DEG: Deg = 5;
const SCAN_DEG: Deg = 10;

/** Angles between which a bend may be left, both of which pass. */
interface Window {
  readonly leastDeg: Deg;
  readonly mostDeg: Deg;
}

/** The widest window of any bend made in two strokes, as a way; undefined where no bend helps like that. */
export function partWay(trial: Trial, goal: Goal): Way | undefined {
  const { part, brake } = trial;
  if (part.bends.length < 2 || part.bends.length > MOST_BENDS) return undefined;
  const strokes = new TwoStrokes(trial, new Machine(brake, part.thicknessMm), goal.leastMm);
  let best: { readonly begun: Omit<Begun, "toDeg">; readonly window: Window } | undefined;
  for (let bend = 0; bend < part.bends.length; bend++) {
    if (part.bends[bend]!.hem) continue;
    for (const clamped of ["start", "end"] as const) {
      const window = windowOf(strokes, { bend, clamped }, part.bends[bend]!.angleDeg);
      if (window && (!best || widthOf(window) > widthOf(best.window)))
        best = { begun: { bend, clamped }, window };
    }
  }
  return best && wayOf(trial, goal, strokes, best.begun, best.window);
}

function widthOf({ leastDeg, mostDeg }: Window): Deg {
  return mostDeg - leastDeg;
}

/** The widest run of angles at which the bend may be left. */
function windowOf(strokes: TwoStrokes, begun: Omit<Begun, "toDeg">, angleDeg: Deg): Window | undefined {
  if (!strokes.canEverFinish(begun)) return undefined;
  const passes = (toDeg: Deg) => strokes.order({ ...begun, toDeg }) !== undefined;
  let widest: Window | undefined;
  let run: Window | undefined;
  for (let toDeg = FIRST_DEG; toDeg <= angleDeg - FIRST_DEG; toDeg += SCAN_DEG) {
    run = passes(toDeg) ? { leastDeg: run?.leastDeg ?? toDeg, mostDeg: toDeg } : undefined;
    if (run && (!widest || widthOf(run) >= widthOf(widest))) widest = run;
  }
  if (!widest) return undefined;
  return {
    leastDeg: edge(passes, widest.leastDeg, Math.max(0, widest.leastDeg - SCAN_DEG)),
    mostDeg: edge(passes, widest.mostDeg, Math.min(angleDeg, widest.mostDeg + SCAN_DEG)),
  };
}

/** The last angle that passes on the way from one that does to one that does not, or is the end of all angles. */
function edge(passes: (toDeg: Deg) => boolean, good: Deg, bad: Deg): Deg {
  let [inside, outside] = [good, bad];
  while (Math.abs(outside - inside) > TOLERANCE.deg) {
    const middle = (inside + outside) / 2;
    if (passes(middle)) inside = middle;
    else outside = middle;
  }
  return inside;
}

function wayOf(
  trial: Trial,
  goal: Goal,
  strokes: TwoStrokes,
  begun: Omit<Begun, "toDeg">,
  window: Window,
): Way | undefined {
  const { angleDeg } = trial.part.bends[begun.bend]!;
  const middle = (window.leastDeg + window.mostDeg) / 2;
  // A round angle is easier to read off; the middle itself where none lies well inside.
  const toDeg =
    [5, 1].map((grain) => grain * Math.round(middle / grain)).find((at) => isInside(at, window)) ?? middle;
  const order = strokes.order({ ...begun, toDeg });
  const outcome = order && outcomeOf(trial, goal.marginMm, order);
  if (!outcome || !reaches(outcome, goal)) return undefined;
  const most = strokes.order({ ...begun, toDeg: window.mostDeg });
  const past = window.mostDeg + STEP.deg;
  return {
    kind: "partWay",
    index: begun.bend + 1,
    changes: [{ kind: "order", order }],
    from: angleDeg,
    to: toDeg,
    notUnder: window.leastDeg,
    ...(most && {
      limit: {
        figure: window.mostDeg,
        changes: [{ kind: "order", order: most }],
        oneStepLess:
          past < angleDeg
            ? [
                {
                  kind: "order",
                  order: most.map((step) => (step.to === undefined ? step : { ...step, to: past })),
                },
              ]
            : null,
      },
    }),
    ...outcome,
    cost: costOf("partWay"),
  };
}

function isInside(angleDeg: Deg, { leastDeg, mostDeg }: Window): boolean {
  return angleDeg - leastDeg > STEP.deg && mostDeg - angleDeg > STEP.deg;
}
