/**
 * Angles and turns of drawn bend lines: from words beside a line such as "90 up", or from a list typed beside the drawing.
 */
import type { Point } from "../plane/point.ts";
import type { Deg } from "../units/quantity.ts";

export interface DrawnAngle {
  readonly angle: Deg;
  readonly turn: "up" | "down";
}

const NUMBER = String.raw`\d+(?:\.\d+)?`;
const DEGREES = String.raw`\s*(?:°|%%d|deg(?:rees)?)?`;
const TURN = "(up|down|dn)";
const ANGLE_FIRST = new RegExp(String.raw`(?<![\d.])(${NUMBER})${DEGREES}[\s,;]*${TURN}\b`, "iu");
const TURN_FIRST = new RegExp(String.raw`\b${TURN}[\s,;]*(${NUMBER})${DEGREES}(?![\d.])`, "iu");

/** What words say of a bend. @example angleOf("BEND UP 90%%d") // { angle: 90, turn: "up" } */
export function angleOf(words: string): DrawnAngle | undefined {
  const [, first, after] = ANGLE_FIRST.exec(words) ?? [];
  const [, before, last] = TURN_FIRST.exec(words) ?? [];
  const figure = first ?? last;
  const turn = (after ?? before)?.toLowerCase();
  if (figure === undefined || turn === undefined) return undefined;
  const angle = Number(figure);
  if (!(angle > 0 && angle < 180)) return undefined;
  return { angle, turn: turn === "up" ? "up" : "down" };
}

export interface AngleList {
  /** For all bends that have none of their own. */
  readonly all?: DrawnAngle;
  /** By number, from 1. */
  readonly byNumber: ReadonlyMap<number, DrawnAngle>;
}

/** A list as typed: "90 up" for all, "2: 45 down" for one; undefined, and which piece, where it is none. */
export function angleList(written: string): AngleList | { readonly wrong: string } {
  const byNumber = new Map<number, DrawnAngle>();
  let all: DrawnAngle | undefined;
  for (const piece of written.split(/[,;]/u)) {
    const [, number, rest] = /^\s*(?:(\d{1,3})\s*[:=])?(.*)$/u.exec(piece) ?? [];
    const angle = angleOf(rest ?? "");
    if (!angle) return { wrong: piece.trim() };
    if (number === undefined) all = angle;
    else byNumber.set(Number(number), angle);
  }
  return { byNumber, ...(all && { all }) };
}

export interface PlacedWords {
  readonly at: Point;
  readonly words: string;
}

/** Distance from a point to a stretch. */
function apart({ x, y }: Point, { from, to }: { readonly from: Point; readonly to: Point }): number {
  const [dx, dy] = [to.x - from.x, to.y - from.y];
  const share = Math.min(1, Math.max(0, ((x - from.x) * dx + (y - from.y) * dy) / (dx * dx + dy * dy)));
  return Math.hypot(from.x + share * dx - x, from.y + share * dy - y);
}

/** What the words of a drawing say of each line: each word goes to the line that it is nearest to. */
export function saidOfLines(
  lines: readonly { readonly from: Point; readonly to: Point }[],
  words: readonly PlacedWords[],
): DrawnAngle[][] {
  const said: DrawnAngle[][] = lines.map(() => []);
  for (const { at, words: written } of words) {
    const angle = angleOf(written);
    if (!angle) continue;
    const distances = lines.map((line) => apart(at, line));
    said[distances.indexOf(Math.min(...distances))]?.push(angle);
  }
  return said;
}
