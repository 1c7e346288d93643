/**
 * Takes in what a job file holds of a whole part, from anywhere: keys of the right kind are kept as typed, others left out and
 * said. What a figure means, and whether it can be, the reader says.
 */
import { type Bag, isBag, isTyped, MOST_BENDS, MOST_PROFILES, profile, type Sieve } from "./sieve.ts";
import { type FingerFile, SIDES, type WholeKeys, type WholeStepFile } from "./wholeFile.ts";

const MOST_LIPS = 10;
const MOST_FINGERS = 100;

/** What is kept of a value; undefined where it is of another kind. */
type Kept = (value: unknown, at: string) => unknown;

const typed: Kept = (value) => (isTyped(value) ? value : undefined);
const counted: Kept = (value) => (Number.isInteger(value) ? value : undefined);
const word =
  (...allowed: readonly string[]): Kept =>
  (value) =>
    typeof value === "string" ? allowed.find((one) => one === value.trim().toLowerCase()) : undefined;
const place: Kept = (value) =>
  Array.isArray(value) && value.length === 2 && value.every(isTyped) ? value : undefined;
const line: Kept = (value, at) =>
  Array.isArray(value) && value.length === 2 && value.every((end) => place(end, at)) ? value : undefined;

/** What is kept of each key; those that must stand there, where nothing does. */
type Keys = Readonly<Record<string, Kept>>;

class Sifting {
  constructor(private readonly sieve: Sieve) {}

  group(keys: Keys, empty: Bag = {}): Kept {
    return (value, at) => {
      if (!isBag(value)) return undefined;
      this.sieve.unknownKeys(value, at, Object.keys(keys));
      const kept = Object.entries(keys).flatMap(([key, each]) => {
        if (value[key] === undefined) return [];
        const one = each(value[key], `${at}.${key}`);
        return one === undefined ? (this.sieve.drop(`${at}.${key}`) ?? []) : [[key, one] as const];
      });
      return { ...empty, ...Object.fromEntries(kept) };
    };
  }

  list(each: Kept, most: number): Kept {
    return (value, at) => (Array.isArray(value) ? this.sieve.list(value, at, most, each) : undefined);
  }

  bent(): Keys {
    return { insideRadius: typed, overbend: typed };
  }

  lips(...turns: readonly string[]): Kept {
    const lip = this.group({ size: typed, angle: typed, turn: word(...turns), ...this.bent() }, { size: "" });
    return this.list(lip, MOST_LIPS);
  }

  box(): Kept {
    const upOrDown = word("up", "down");
    const wall = this.group(
      { height: typed, angle: typed, turn: upOrDown, lips: this.lips("in", "out"), ...this.bent() },
      { height: "" },
    );
    const heightOrWall: Kept = (value, at) => typed(value, at) ?? wall(value, at);
    const tabs = this.group({ tab: typed, on: word("inside", "outside"), ...this.bent() }, { tab: "" });
    const corners: Kept = (value, at) => word("open", "meet")(value, at) ?? tabs(value, at);
    const walls = this.group(Object.fromEntries(SIDES.map((side) => [side, heightOrWall])));
    return this.group(
      { width: typed, depth: typed, walls, corners, gap: typed },
      { width: "", depth: "", walls: {} },
    );
  }

  end(): Kept {
    const upOrDown = word("up", "down");
    return this.group(
      {
        flat: counted,
        at: word("start", "finish"),
        size: typed,
        angle: typed,
        turn: upOrDown,
        from: typed,
        to: typed,
        lips: this.lips("up", "down"),
        ...this.bent(),
      },
      { flat: 1, at: "start", size: "", angle: 90, turn: "up" },
    );
  }

  pattern(): Kept {
    const ring = profile(this.sieve);
    const bend = this.group(
      { line, angle: typed, turn: word("up", "down"), ...this.bent() },
      {
        line: [
          ["", ""],
          ["", ""],
        ],
        angle: 90,
        turn: "up",
      },
    );
    return this.group(
      { outline: ring, holes: this.list(ring, MOST_PROFILES), bends: this.list(bend, MOST_BENDS) },
      { outline: [], bends: [] },
    );
  }
}

/** The keys that make a part more than a section. */
export function adoptWhole(sieve: Sieve, part: Bag): WholeKeys {
  const sifting = new Sifting(sieve);
  const keys: Keys = {
    box: sifting.box(),
    pattern: sifting.pattern(),
    ends: sifting.list(sifting.end(), MOST_BENDS),
    spans: sifting.list(
      sifting.group({ flat: counted, from: typed, to: typed }, { flat: 1, from: "", to: "" }),
      MOST_BENDS + 1,
    ),
  };
  return Object.fromEntries(
    Object.entries(keys).flatMap(([key, each]) => {
      if (part[key] === undefined) return [];
      const kept = each(part[key], `part.${key}`);
      return kept === undefined ? (sieve.drop(`part.${key}`) ?? []) : [[key, kept]];
    }),
  ) as WholeKeys;
}

/** The user's own order of strokes. */
export function adoptStrokes(sieve: Sieve, value: unknown): readonly WholeStepFile[] | undefined {
  if (value === undefined) return undefined;
  const sifting = new Sifting(sieve);
  const finger = sifting.group({ width: typed, from: typed }, { width: "", from: "" });
  const step = sifting.group(
    {
      bends: sifting.list(counted, MOST_BENDS),
      clampedAt: place,
      fingers: sifting.list(finger, MOST_FINGERS),
      placed: typed,
    },
    { bends: [], clampedAt: ["", ""] },
  );
  return (sifting.list(step, 2 * MOST_BENDS)(value, "order") ?? sieve.drop("order")) as
    | readonly WholeStepFile[]
    | undefined;
}

/** The fingers that a shop owns. */
export function adoptFingers(sieve: Sieve, value: unknown): readonly FingerFile[] | undefined {
  if (value === undefined) return undefined;
  const sifting = new Sifting(sieve);
  const finger = sifting.group({ width: typed, count: counted }, { width: "", count: 1 });
  const at = "brake.clamp.fingers";
  return (sifting.list(finger, MOST_FINGERS)(value, at) ?? sieve.drop(at)) as
    | readonly FingerFile[]
    | undefined;
}
