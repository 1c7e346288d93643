/**
 * New texts from old ones for the fuzzer: signs and lines struck out, doubled and swapped, and where the text is JSON its
 * values and keys changed so that it stays JSON. Seeded: the same numbers give the same texts.
 */

/** Numbers from 0 to 1 from a seed (mulberry32, public domain; from memory). */
export function chance(seed: number): () => number {
  let state = seed >>> 0;
  return () => {
    state = (state + 0x6d2b79f5) >>> 0;
    let t = Math.imul(state ^ (state >>> 15), state | 1);
    t ^= t + Math.imul(t ^ (t >>> 7), t | 61);
    return ((t ^ (t >>> 14)) >>> 0) / 4294967296;
  };
}

/** Values that readers trip over. */
const ODD_VALUES: readonly unknown[] = [
  ...[0, -0, 1, -1, 0.1, 90, 180, 1e-9, 1e6, 1e21, 1e308, -1e308, 5e-324, 2 ** 53],
  ...[
    "",
    " ",
    "3/8",
    "1/0",
    "0/0",
    "1 1/2 in",
    "-5 mm",
    "20 ga steel",
    "99 ga",
    "1e999",
    "NaN",
    "auto",
    "\u0000",
  ],
  ...["up", "down", "start", "end", "bar", "finger", "profile", "mm", "in", "outside", "inside", "flat"],
  ...["__proto__", "constructor", "toString", "9".repeat(79), "\u202e", "<b>", "\ud800"],
  ...[
    null,
    true,
    false,
    [],
    {},
    [[]],
    [0, 0],
    [0, 0, 0],
    [
      [0, 0],
      [1, 0],
      [0, 1],
    ],
  ],
];
const ODD_KEYS = [
  ...["__proto__", "constructor", "prototype", "length", "toString", "setback", "pivot", "frame", "order"],
  ...[
    "margin",
    "kFactor",
    "overbend",
    "insideRadius",
    "topRadius",
    "holderBack",
    "profiles",
    "rated",
    "noseRadius",
  ],
  ...["grain", "doubts", "cutOuts", "across", "along", "to", "sample", "overall", "material", "length"],
];
const WORDS = [
  ...[
    "{",
    "}",
    "[",
    "]",
    ",",
    ":",
    '"',
    "\\",
    "\n",
    "\r\n",
    "-",
    ".",
    "e",
    "0",
    "1e308",
    "null",
    "é",
    "\ufeff",
  ],
  ...["\\u0000", "\\ud800", "LINE", "ARC", "CIRCLE", "LWPOLYLINE", "POLYLINE", "VERTEX", "SEQEND", "SECTION"],
  ...["ENDSEC", "EOF", "ENTITIES", "BLOCKS", "INSERT", "SPLINE", "$INSUNITS", "999", "70\n1\n", "42\n1\n"],
  ...["10\n1e9\n", "40\n0\n", "#job=", "#job=1.", "=", "_", "%"],
];

export class Mutator {
  constructor(private readonly random: () => number) {}

  below(count: number): number {
    return Math.floor(this.random() * count);
  }

  pick<Item>(items: readonly Item[]): Item {
    return items[this.below(items.length)]!;
  }

  /** A text made from `text`, with `other` to take pieces from. */
  changed(text: string, other: string): string {
    let out = text;
    for (let times = 1 + this.below(3); times > 0; times--) {
      const json = this.random() < 0.6 ? this.changedJson(out, other) : undefined;
      out = json ?? (this.random() < 0.5 ? this.changedLines(out, other) : this.changedSigns(out, other));
    }
    return out.slice(0, MOST_SIGNS);
  }

  private changedSigns(text: string, other: string): string {
    const at = this.below(text.length + 1);
    const most = this.random() < 0.8 ? 8 : text.length;
    const end = at + this.below(most + 1);
    switch (this.below(5)) {
      case 0:
        return text.slice(0, at) + text.slice(end);
      case 1:
        return text.slice(0, at) + this.pick(WORDS) + text.slice(end);
      case 2:
        return text.slice(0, end) + text.slice(at);
      case 3:
        return text.slice(0, at) + other.slice(this.below(other.length + 1)).slice(0, 40) + text.slice(at);
      default:
        return (
          text.slice(0, at) +
          String.fromCharCode(this.below(this.random() < 0.9 ? 128 : 65536)) +
          text.slice(at + 1)
        );
    }
  }

  private changedLines(text: string, other: string): string {
    const lines = text.split("\n");
    const at = this.below(lines.length);
    const count = 1 + this.below(6);
    switch (this.below(5)) {
      case 0:
        lines.splice(at, count);
        break;
      case 1:
        lines.splice(at, 0, ...lines.slice(at, at + count));
        break;
      case 2:
        lines[at] = String(this.pick(ODD_VALUES));
        break;
      case 3:
        lines[at] = this.pick(WORDS);
        break;
      default:
        lines.splice(at, count, ...other.split("\n").slice(this.below(200)).slice(0, count));
    }
    return lines.join("\n");
  }

  /** The JSON text with one place changed; undefined where it is no JSON. */
  private changedJson(text: string, other: string): string | undefined {
    let root: unknown;
    try {
      root = JSON.parse(text);
    } catch {
      return undefined;
    }
    const places: { readonly bag: Record<PropertyKey, unknown>; readonly key: PropertyKey }[] = [];
    const walk = (value: unknown, depth: number): void => {
      if (typeof value !== "object" || value === null || depth > 12) return;
      for (const key of Object.keys(value)) {
        places.push({ bag: value as Record<PropertyKey, unknown>, key });
        walk((value as Record<string, unknown>)[key], depth + 1);
      }
    };
    walk(root, 0);
    if (places.length === 0) return JSON.stringify(this.pick(ODD_VALUES));
    const { bag, key } = this.pick(places);
    const set = (name: PropertyKey, value: unknown) =>
      Object.defineProperty(bag, name, { value, enumerable: true, configurable: true, writable: true });
    switch (this.below(7)) {
      case 0:
        if (Array.isArray(bag)) bag.splice(Number(key), 1);
        else delete bag[key];
        break;
      case 1:
        set(key, this.pick(ODD_VALUES));
        break;
      case 2:
        set(Array.isArray(bag) ? key : this.pick(ODD_KEYS), this.pick(ODD_VALUES));
        break;
      case 3: {
        const from = this.pick(places);
        set(key, structuredClone(from.bag[from.key]));
        break;
      }
      case 4:
        if (Array.isArray(bag))
          bag.splice(Number(key), 0, ...Array.from({ length: 1 + this.below(30) }, () => bag[Number(key)]));
        break;
      case 5: {
        const value = bag[key];
        set(key, typeof value === "number" ? this.nearNumber(value) : String(this.pick(ODD_VALUES)));
        break;
      }
      default: {
        const piece = this.changedSigns(JSON.stringify(bag[key]) ?? "", other);
        const marked = JSON.stringify(root, (_, value) =>
          value === bag[key] && typeof value === "string" ? piece : value,
        );
        return marked;
      }
    }
    return JSON.stringify(root);
  }

  private nearNumber(value: number): number {
    const ways = [
      -value,
      value * 10,
      value / 10,
      value + 1,
      value - 1e-9,
      Math.round(value),
      value * (1 + this.random()),
    ];
    return this.pick(ways);
  }
}

const MOST_SIGNS = 20_000;
