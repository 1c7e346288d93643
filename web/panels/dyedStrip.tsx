/**
 * The blank as it lies on the bench: dyed blue, bend tangent lines scribed, sight lines broken. With cut-outs it is drawn
 * to its true shape, the longer side lying, with what is cut away and the relief holes drilled.
 */
import type { CutOut } from "../../src/blank/cutOut.ts";
import type { Answer } from "../../src/jobFile/answer.ts";

const WIDE = 600;
const STRIP_HIGH = 64;
const MOST_FLATS_NAMED = 12;

interface Box {
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
}

/** Lays places of the blank, across and along its bends in mm, on the picture; the blank's start at the left or the foot. */
function layOn(widthMm: number, lengthMm: number) {
  const lying = lengthMm > widthMm;
  const [wideMm, highMm] = lying ? [lengthMm, widthMm] : [widthMm, lengthMm];
  const scale = WIDE / wideMm;
  const high = highMm * scale;
  const at = (acrossMm: number, alongMm: number) =>
    lying ? { x: alongMm * scale, y: acrossMm * scale } : { x: acrossMm * scale, y: high - alongMm * scale };
  const box = (across: readonly [number, number], along: readonly [number, number]): Box => {
    const [one, other] = [at(across[0], along[0]), at(across[1], along[1])];
    return {
      x: Math.min(one.x, other.x),
      y: Math.min(one.y, other.y),
      width: Math.abs(one.x - other.x),
      height: Math.abs(one.y - other.y),
    };
  };
  return { high, scale, at, box };
}

/** A place along the flat at which nothing is cut away. */
function uncutMm(atMm: number, lengthMm: number, cutOuts: readonly CutOut[]): number {
  const places = [0.5, 0.25, 0.75, 0.1, 0.9].map((share) => share * lengthMm);
  const free = (alongMm: number) =>
    cutOuts.every(
      ({ acrossMm, alongMm: [from, to] }) =>
        atMm < acrossMm[0] || atMm > acrossMm[1] || alongMm < from || alongMm > to,
    );
  return places.find(free) ?? lengthMm / 2;
}

export function DyedStrip({
  blank,
  sightsMm,
  cutOuts,
  lengthMm: givenMm,
}: {
  readonly blank: Answer["blank"];
  readonly sightsMm: readonly number[];
  readonly cutOuts: readonly CutOut[];
  readonly lengthMm: number | undefined;
}) {
  const widthMm = blank.developedWidth;
  const isCut = cutOuts.length > 0 && givenMm !== undefined;
  const lengthMm = isCut ? givenMm : (STRIP_HIGH / WIDE) * widthMm;
  const { high, scale, at, box } = layOn(widthMm, lengthMm);
  const cuts = isCut ? cutOuts : [];
  const holes = isCut ? (blank.reliefHoles ?? []) : [];
  const lines = (acrossMm: number, kind?: string) => {
    const [from, to] = [at(acrossMm, 0), at(acrossMm, lengthMm)];
    return <line class={kind} x1={from.x} y1={from.y} x2={to.x} y2={to.y} />;
  };
  const ends = [0, ...blank.bends.flatMap((bend) => bend.tangents), widthMm];
  const counted = (count: number, one: string) => `${count} ${one}${count === 1 ? "" : "s"}`;
  const words = isCut
    ? `The blank with its bend tangent lines, sight lines broken, ${counted(cuts.length, "cut-out")} and ${counted(holes.length, "relief hole")}`
    : "The blank with its bend tangent lines, and sight lines broken";
  return (
    <svg class="dyed" viewBox={`0 0 ${WIDE} ${high}`} role="img" aria-label={words}>
      <rect width={WIDE} height={high} />
      {blank.bends.map((bend, i) => (
        <g key={bend.bend}>
          {lines(bend.tangents[0])}
          {lines(bend.tangents[1])}
          {lines(sightsMm[i]!, "sight")}
        </g>
      ))}
      {cuts.map(({ acrossMm, alongMm }, i) => (
        <rect key={i} class="cut" {...box(acrossMm, alongMm)} />
      ))}
      {holes.map((hole, i) => {
        const middle = at(hole.x, hole.y);
        return <circle key={i} class="cut" cx={middle.x} cy={middle.y} r={(hole.diameter / 2) * scale} />;
      })}
      {blank.bends.length < MOST_FLATS_NAMED
        ? Array.from({ length: blank.bends.length + 1 }, (_, i) => {
            const middleMm = (ends[2 * i]! + ends[2 * i + 1]!) / 2;
            const place = at(middleMm, uncutMm(middleMm, lengthMm, cuts));
            return (
              <text key={i} x={place.x} y={place.y + 4} text-anchor="middle">
                {i + 1}
              </text>
            );
          })
        : null}
    </svg>
  );
}
