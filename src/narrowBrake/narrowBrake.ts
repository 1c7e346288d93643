/**
 * The shop-made narrow brake as plain data: what was asked, loads, bar window, plan, checks, lists, words.
 * Printed as plans, drawn by drawing/narrowBrake.ts, and read back as a brake by madeBrake.ts.
 * Lengths in mm, forces in N, torques in N·m.
 */
import type { Deg, Mm } from "../units/quantity.ts";
import type { BarWindow } from "./barWindow.ts";
import type { BedPlan } from "./chooseBed.ts";
import type { HandlePlan, PinPlan, RailPlan, ScrewPlan, TonguePlan } from "./chooseFittings.ts";
import type { HolderPlan } from "./chooseHolder.ts";
import type { LeafPlan } from "./chooseLeaf.ts";
import type { GoverningLoads } from "./governingLoads.ts";
import type { ResolvedRequirements } from "./requirements.ts";
import type { StockSize } from "./stockSize.ts";
import type { CrownStation } from "./strength/crown.ts";
import type { StrengthCheck } from "./strengthCheck.ts";

export interface BarPlan {
  readonly stock: StockSize;
  readonly thicknessMm: Mm;
  /** Front to back. */
  readonly depthMm: Mm;
  /** Along the bend. */
  readonly lengthMm: Mm;
  readonly overhangMm: Mm;
  readonly noseRadiusMm: Mm;
  readonly frontBevelDeg: Deg;
}

export interface NarrowBrakePlan {
  readonly bar: BarPlan;
  readonly holder: HolderPlan;
  readonly bed: BedPlan;
  readonly leaf: LeafPlan;
  readonly pin: PinPlan;
  readonly handle: HandlePlan;
  readonly screws: ScrewPlan;
  readonly rail: RailPlan;
  readonly tongue: TonguePlan;
}

export interface CutPiece {
  readonly piece: string;
  readonly count: number;
  /** Stock by name and unit: "1/4 × 2 flat (in)". */
  readonly stock: string;
  readonly lengthMm: Mm;
  /** All of them together. */
  readonly weightKg: number;
  readonly work: string;
}

export interface HardwareItem {
  readonly item: string;
  readonly count: number;
  readonly size: string;
  readonly remark: string;
}

/** How a long member bows under the full load, and the packing that cancels it. */
export interface BowReport {
  readonly member: string;
  /** Against its supports. */
  readonly midDeflectionMm: Mm;
  readonly bowMm: Mm;
  /** What bow (and twist, in a leaf) takes off the bend angle at mid-length. */
  readonly angleLostDeg: Deg;
  readonly crown: readonly CrownStation[];
  /** The same in words, hundredths of a millimetre. */
  readonly sentence: string;
}

export interface NarrowBrake {
  readonly requirements: ResolvedRequirements;
  readonly loads: GoverningLoads;
  readonly window: BarWindow;
  /** Null where the window is empty or stock runs out; `problems` says why. */
  readonly plan: NarrowBrakePlan | null;
  /** The window in words, in the user's unit. */
  readonly windowSentence: string;
  readonly bows: readonly BowReport[];
  readonly checks: readonly StrengthCheck[];
  /** One sentence each; empty where all is well. */
  readonly problems: readonly string[];
  /** True where there is a plan and every check passes. */
  readonly feasible: boolean;
  readonly assumptions: readonly string[];
  readonly cutList: readonly CutPiece[];
  readonly weightKg: number;
  readonly hardware: readonly HardwareItem[];
  readonly tools: readonly string[];
  readonly makingOrder: readonly string[];
  readonly proving: readonly string[];
  readonly limits: readonly string[];
  readonly cautions: readonly string[];
}
