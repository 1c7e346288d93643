/**
 * Makes the pieces of an assembly one after the other and numbers them for the cut list by name, in order of appearance.
 */
import { formatLength, type LengthUnit } from "../units/length.ts";
import type { Mm } from "../units/quantity.ts";
import type { Hole, Piece, Prism, Round, Xyw } from "./solid.ts";

export interface Made {
  readonly name: string;
  readonly stock: string;
  readonly shape: Prism | Round;
  readonly holes?: readonly Hole[];
  readonly turnsWithLeaf?: boolean;
  readonly weldedTo?: readonly string[];
  readonly boltedTo?: readonly string[];
}

export class PieceMaker {
  readonly pieces: Piece[] = [];
  private readonly items = new Map<string, number>();

  constructor(private readonly units: LengthUnit) {}

  add(id: string, made: Made): void {
    const item = this.items.get(made.name) ?? this.items.size + 1;
    this.items.set(made.name, item);
    this.pieces.push({
      id,
      item,
      holes: [],
      turnsWithLeaf: false,
      weldedTo: [],
      boltedTo: [],
      ...made,
    });
  }

  /** A length as the rack has it. */
  words(mm: Mm): string {
    return formatLength(mm, this.units);
  }

  flat(thickMm: Mm, wideMm: Mm, kind: "cold-finished" | "hot-rolled"): string {
    return `${this.words(thickMm)} × ${this.words(wideMm)} ${kind} flat`;
  }

  round(diameterMm: Mm, kind = "cold-finished round"): string {
    return `${this.words(diameterMm)} ${kind}`;
  }
}

/** A hole straight down. */
export function upright(
  x: Mm,
  w: Mm,
  [fromY, toY]: readonly [Mm, Mm],
  diameter: Mm,
  more: Pick<Hole, "tapped" | "reason" | "slot"> = {},
): Hole {
  return { diameter, ...more, from: [x, fromY, w], to: [x, toY, w] };
}

/** A round that stands upright. */
export function standing(x: Mm, w: Mm, [fromY, toY]: readonly [Mm, Mm], diameter: Mm): Round {
  return { diameter, from: [x, fromY, w], to: [x, toY, w] };
}

/** A round that lies front to back. */
export function level(y: Mm, w: Mm, [fromX, toX]: readonly [Mm, Mm], diameter: Mm): Round {
  const from: Xyw = [fromX, y, w];
  return { diameter, from, to: [toX, y, w] };
}

/** A round along the bend. */
export function along(x: Mm, y: Mm, [fromW, toW]: readonly [Mm, Mm], diameter: Mm): Round {
  return { diameter, from: [x, y, fromW], to: [x, y, toW] };
}
