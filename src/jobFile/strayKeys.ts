/**
 * Keys that stand where they are not known: a slip of spelling, another word for the same, or a key of another group,
 * which most often means a bracket in the wrong place.
 * Nearness of spelling is the count of letters put in, left out, changed or swapped (Damerau and Levenshtein).
 */
import { type Problem, pathText } from "./problem.ts";

/** Where each key of a job belongs that could be met elsewhere; "" is the top of the file. */
const HOMES: readonly (readonly [home: string, keys: string])[] = [
  ["", "units order margin brake part"],
  [
    "part",
    "material thickness insideRadius kFactor dimensions closedBends flats bends overall allowance grain doubts cutOuts ends spans box pattern",
  ],
  ["part.box", "walls corners gap"],
  ["brake", "clamp bed leaf frame lift openEnds setback rated leastGrip leastFlange"],
  [
    "brake.clamp",
    "noseRadius noseAngle topRadius footDepth holderBack holderHeight holderDepth profiles fingers fingerGap",
  ],
  ["brake.leaf", "swing pivot"],
];

/** Other words that people type, in small letters, and the keys that they may stand for. */
const SAID: ReadonlyMap<string, string> = new Map([
  ["radius", "insideRadius"],
  ["bendradius", "insideRadius"],
  ["innerradius", "insideRadius"],
  ["metal", "material"],
  ["gauge", "thickness"],
  ["gage", "thickness"],
  ["unit", "units"],
  ["direction", "turn"],
  ["degrees", "angle"],
  ["legs", "flats"],
  ["flanges", "flats"],
  ["lengths", "flats"],
  ["sides", "flats"],
  ["nosesetback", "setback"],
  ["clearance", "margin"],
  ["side", "clamped"],
  ["end", "clamped"],
  ["kind", "type"],
  ["k", "kFactor"],
  ["height", "size depth"],
  ["length", "depth width"],
  ["size", "height width"],
  ["rear", "back"],
  ["flange", "lips"],
  ["bendlines", "bends"],
]);

/** A stray key is taken for a known one within so many slips of the pen. */
const NEAR = 2;

/** What is wrong with stray keys, and the known keys that they stand for: those are not told as missing too. */
export interface Strays {
  readonly problems: readonly Problem[];
  readonly meant: readonly string[];
}

/** What to say of keys that are not known in the group at `path`; `known` are those that are. */
export function strayKeys(
  path: readonly PropertyKey[],
  stray: readonly string[],
  known: readonly string[],
): Strays {
  const group = pathText(path);
  const away = stray.flatMap((key) => homeOf(key, group) ?? []);
  const left = stray.filter((key) => !away.some((one) => one.key === key));
  const meant: string[] = away.map(({ home, key }) =>
    pathText(home === "" ? [key] : [...home.split("."), key]),
  );
  const problems = left.map((key): Problem => {
    const near = nearest(key, known);
    if (near !== undefined) meant.push(pathText([...path, near]));
    const allowed = near ?? `one of ${known.join(", ")}`;
    return { path: pathText([...path, key]), found: "a key that is not known here", allowed };
  });
  for (const home of new Set(away.map((one) => one.home))) {
    const keys = away.filter((one) => one.home === home).map(({ key }) => key);
    const where = home === "" ? "at the top of the file" : `under "${home}"`;
    problems.push(
      keys.length === 1
        ? { path: pathText([...path, keys[0]!]), found: "a key that is not known here", allowed: where }
        : {
            path: group,
            found: `the keys ${keys.slice(0, 6).join(", ")} in it`,
            allowed: `closed before them, since they belong ${where}`,
          },
    );
  }
  return { problems, meant };
}

function homeOf(key: string, group: string): { key: string; home: string } | undefined {
  for (const [home, keys] of HOMES) {
    if (home !== group && keys.split(" ").includes(key)) return { key, home };
  }
  return undefined;
}

/** The known key that a stray one is taken for. @example nearest("thicknes", ["thickness"]) // "thickness" */
export function nearest(key: string, known: readonly string[]): string | undefined {
  if (key.length > 40) return undefined;
  const word = key.toLowerCase().replace(/[\s_-]/gu, "");
  const same = known.find((one) => one.toLowerCase() === word);
  const said = SAID.get(word)
    ?.split(" ")
    .find((one) => known.includes(one));
  if (same !== undefined || said !== undefined) return same ?? said;
  const most = Math.min(NEAR, Math.floor(word.length / 3));
  const near = known
    .map((one) => ({ one, slips: slipsBetween(word, one.toLowerCase()) }))
    .sort((a, b) => a.slips - b.slips)[0];
  return near !== undefined && near.slips <= most ? near.one : undefined;
}

/** Letters put in, left out, changed, or swapped with the next. */
function slipsBetween(a: string, b: string): number {
  const rows: number[][] = [Array.from({ length: b.length + 1 }, (_, j) => j)];
  for (let i = 1; i <= a.length; i++) {
    const [row, above] = [[i], rows[i - 1]!];
    for (let j = 1; j <= b.length; j++) {
      const same = a[i - 1] === b[j - 1];
      let least = Math.min(above[j - 1]! + (same ? 0 : 1), above[j]! + 1, row[j - 1]! + 1);
      const swapped = i > 1 && j > 1 && a[i - 1] === b[j - 2] && a[i - 2] === b[j - 1];
      if (swapped) least = Math.min(least, rows[i - 2]![j - 2]! + 1);
      row.push(least);
    }
    rows.push(row);
  }
  return rows[a.length]![b.length]!;
}
