/**
 * The shop-made narrow brake as plain data: what was asked, loads, bar window, and the plan with its assembly, checks, lists and
 * words, or the reason why there is none. Lengths in mm, forces in N, torques in N·m.
 */
import type { Mm } from "../units/quantity.ts";
import type { BarWindow } from "./barWindow.ts";
import type { GoverningLoads } from "./governingLoads.ts";
import type { Places } from "./places.ts";
import type { ResolvedRequirements } from "./requirements.ts";
import type { BrakeSizes } from "./sizes.ts";
import type { Assembly } from "./solid.ts";
import type { StrengthCheck } from "./strengthCheck.ts";

export interface CutPiece {
  /** Number in the list, on the balloons and in the assembly. */
  readonly item: number;
  readonly piece: string;
  readonly count: number;
  /** Stock by name and unit: "1/4 × 2 cold-finished flat (in)". */
  readonly stock: string;
  readonly lengthMm: Mm;
  /** All of them together. */
  readonly weightKg: number;
  readonly work: string;
  /** Bought as it is; nothing to saw or drill. */
  readonly bought: boolean;
}

/** Why there is no plan, and the longest brake for the same sheet that could be planned; 0 where none could. */
export interface Refused {
  readonly why: string;
  readonly longestMm: Mm;
}

/** A step of making, with the pieces that its picture shows. */
export interface MakingStep {
  readonly words: string;
  readonly shows: readonly string[];
}

export interface ShopWords {
  /** What the brake carries and how hard to tighten, pull, push. */
  readonly carries: readonly string[];
  readonly crown: readonly string[];
  readonly assumptions: readonly string[];
  readonly tools: readonly string[];
  readonly making: readonly MakingStep[];
  readonly proving: readonly string[];
  readonly limits: readonly string[];
  /** What no check covers. */
  readonly notChecked: readonly string[];
  readonly cautions: readonly string[];
}

export interface NarrowBrakePlan extends ShopWords {
  readonly sizes: BrakeSizes;
  readonly places: Places;
  readonly assembly: Assembly;
  readonly checks: readonly StrengthCheck[];
  readonly cutList: readonly CutPiece[];
  readonly weightKg: number;
}

export interface NarrowBrake {
  readonly requirements: ResolvedRequirements;
  readonly loads: GoverningLoads;
  readonly window: BarWindow;
  /** The window in words, in the user's unit. */
  readonly windowSentence: string;
  /** Null where it is refused. */
  readonly plan: NarrowBrakePlan | null;
  readonly refused: Refused | null;
}
