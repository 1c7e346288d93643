/**
 * The leaf's turn and the sheet's slide along it, tabled over a sweep for the contact kernel.
 * Slide s(φ) and its rate are slide.ts's; s″ = A/2·tan(φ/2)·sec²(φ/2). Exact; the bounds on |s|, |s′|, |s″| hold over the
 * whole sweep.
 */
import type { Mm, Rad } from "../units/quantity.ts";
import { type Slide, slideAt, slideBy, slideRateBy, slideTurnsAt } from "./slide.ts";

/**
 * A motion of one body against another, tabled at equal steps of the leaf angle: turned about the origin by
 * `turns`·φ (1, or 0 for what rides on the leaf) after a slide s(φ) along its own x.
 */
export interface Swing extends Slide {
  readonly turns: 0 | 1;
  /** Where the swing starts, 0 but for a bend that was begun before, and where it ends. */
  readonly fromRad: Rad;
  readonly sweepRad: Rad;
  /** Number of steps; the tables hold one value more. 0 when nothing moves. */
  readonly steps: number;
  readonly stepRad: Rad;
  readonly cos: Float64Array;
  readonly sin: Float64Array;
  readonly slide: Float64Array;
  readonly slideRate: Float64Array;
  readonly maxSlide: Mm;
  /** How far the sheet slides back toward the pivot at most; 0 where it only slides outward. */
  readonly maxInward: Mm;
  readonly maxSlideRate: number;
  readonly maxSlideBend: number;
}

// Coarser steps leave more pairs of edges to be split by the root finder, finer ones cost at every pair: about 10°
// was fastest on parts of 10 to 100 mm (npm run bench).
const STEP_RAD = 0.18;

/** Tables a swing from rest, or from `fromRad`, to `sweepRad`; where these are the same, that pose alone. */
export function tableSwing(
  turns: 0 | 1,
  slideTan: number,
  slideTurn: number,
  sweepRad: Rad,
  fromRad: Rad = 0,
): Swing {
  const of = { slideTan, slideTurn };
  const rangeRad = Math.max(0, sweepRad - fromRad);
  const steps = Math.ceil(rangeRad / STEP_RAD);
  const stepRad = steps === 0 ? 0 : rangeRad / steps;
  const table = { cos: new Float64Array(steps + 1), sin: new Float64Array(steps + 1) };
  const slides = { slide: new Float64Array(steps + 1), slideRate: new Float64Array(steps + 1) };
  let [maxSlide, maxInward, maxSlideRate] = [0, 0, 0];
  for (let j = 0; j <= steps; j++) {
    const phi = j === steps ? sweepRad : fromRad + j * stepRad;
    table.cos[j] = turns ? Math.cos(phi) : 1;
    table.sin[j] = turns ? Math.sin(phi) : 0;
    const half = Math.tan(phi / 2);
    slides.slide[j] = slideBy(of, half, phi);
    slides.slideRate[j] = slideRateBy(of, half);
    maxSlideRate = Math.max(maxSlideRate, Math.abs(slides.slideRate[j]!));
    maxSlide = Math.max(maxSlide, Math.abs(slides.slide[j]!));
    maxInward = Math.max(maxInward, -slides.slide[j]!);
  }
  // s″ keeps its sign, so |s′| is largest at an end; s may turn between, where s′ = 0 (NaN: nowhere).
  const turnRad = slideTurnsAt(of);
  if (turnRad < sweepRad) {
    const turning = slideAt(of, turnRad);
    maxSlide = Math.max(maxSlide, Math.abs(turning));
    maxInward = Math.max(maxInward, -turning);
  }
  const half = Math.tan(sweepRad / 2);
  return {
    turns,
    slideTan,
    slideTurn,
    fromRad,
    sweepRad,
    steps,
    stepRad,
    ...table,
    ...slides,
    maxSlide,
    maxInward,
    maxSlideRate,
    maxSlideBend: Math.abs((slideTan / 2) * half * (1 + half * half)),
  };
}

/** The pose at rest alone, for what does not move at all. */
export const AT_REST: Swing = tableSwing(1, 0, 0, 0);

/** Where a swing is at one leaf angle; cosine 1 and sine 0 for what rides on the leaf. */
export interface Moment {
  readonly phiRad: Rad;
  readonly cos: number;
  readonly sin: number;
  readonly slide: Mm;
  /** Millimetres per radian. */
  readonly slideRate: number;
}

/** @example momentAt(AT_REST, 0).cos // 1 */
export function momentAt(swing: Swing, phiRad: Rad): Moment {
  const { turns } = swing;
  const half = Math.tan(phiRad / 2);
  return {
    phiRad,
    cos: turns ? Math.cos(phiRad) : 1,
    sin: turns ? Math.sin(phiRad) : 0,
    slide: slideBy(swing, half, phiRad),
    slideRate: slideRateBy(swing, half),
  };
}
