/**
 * What the page and its worker say to each other. Plain data only; a job goes over as the file's own text, so that
 * page and command read it with the same reader.
 */
import type { Answer } from "../../src/jobFile/answer.ts";
import type { Job } from "../../src/jobFile/job.ts";
import type { JobFile } from "../../src/jobFile/schema.ts";
import type { NarrowBrakeWishes } from "../../src/narrowBrake/requirements.ts";
import type { DxfProfiles } from "../dxf/profileFromDxf.ts";
import type { SceneAsked, SceneShown } from "../whole/scenes.ts";
import type { WholeShown } from "../whole/wholeShown.ts";

/** One thing to put right: where, and the reader’s sentence; `allowed` alone for the line beside the field. */
export interface Problem {
  /** Key path as the reader writes it, "part.flats[2]"; lists count from 0. */
  readonly path: string;
  readonly sentence: string;
  readonly allowed: string;
}

/** A way out that the engine has run again; `file` is the job with it carried out, null where nothing helps. */
export interface Way {
  readonly sentence: string;
  readonly because: string | null;
  readonly file: JobFile | null;
}

/** A shop-made narrow brake in words and drawings, ready to show. */
export interface NarrowBrakePlans {
  /** Which of the jobs asked for it makes, from 0; empty where there is no brake to show. */
  readonly makes: readonly number[];
  /** The others: which, and why not. */
  readonly left: readonly { readonly part: number; readonly because: string }[];
  /** Null where no clamp bar makes any of the parts. */
  readonly shown: ShownBrake | null;
  /** Each job asked for on the made brake; null where it would not fold there. */
  readonly files: readonly (JobFile | null)[];
}

export interface ShownBrake {
  readonly window: string;
  /** Weight, guessed lengths and whatever else belongs beside the window, one sentence each. */
  readonly notes: readonly string[];
  /** What stands against it; empty where all is well. */
  readonly problems: readonly string[];
  readonly cuts: readonly (readonly string[])[];
  /** Heading and lines, in the order in which they are wanted at the bench. */
  readonly lists: readonly { readonly heading: string; readonly lines: readonly string[] }[];
  readonly cautions: string;
  /** Null where there is no plan to draw. */
  readonly drawing: {
    readonly sentence: string;
    /** The numbered picture, for a wide screen and for a small one. */
    readonly svg: string;
    readonly small: string;
    /** A drawing of each piece, and of each step of making, to look at on the bench. */
    readonly pieces: readonly ShownSketch[];
    readonly steps: readonly ShownSketch[];
    readonly dxf: readonly { readonly name: string; readonly text: string }[];
    readonly stl: string;
    readonly pages: readonly PaperPage[];
  } | null;
}

/** A small picture with its words. */
export interface ShownSketch {
  readonly words: string;
  readonly svg: string;
}

/** A printed page: pictures placed on a sheet of paper, millimetres from its upper left corner. */
export interface PaperPage {
  readonly paper: "A4" | "Letter";
  readonly widthMm: number;
  readonly heightMm: number;
  readonly pictures: readonly PaperPicture[];
}

export interface PaperPicture {
  readonly svg: string;
  readonly words: string;
  readonly leftMm: number;
  readonly topMm: number;
  readonly widthMm: number;
  readonly heightMm: number;
}

/** Every part on every brake: a row a part, a cell a brake. */
export interface FitShown {
  readonly sentence: string;
  readonly brakes: readonly string[];
  readonly rows: readonly { readonly part: string; readonly cells: readonly FitShownCell[] }[];
  /** One sentence for each job that could not be taken in. */
  readonly leftOut: readonly string[];
}

export interface FitShownCell {
  readonly verdict: "clear" | "tight" | "hits" | "unfit";
  readonly words: string;
  /** Least clearance and where, where it stops, or why it is not for that brake. */
  readonly more: string;
}

/** Orders of one part to compare, the best first. */
export interface OrdersShown {
  readonly job: Job;
  readonly orders: readonly OrderShown[];
  readonly tried: number;
  /** Whether all orders that there are were tried. */
  readonly all: boolean;
  /** How many beside the best fold. */
  readonly folding: number;
}

export interface OrderShown {
  readonly sequence: string;
  readonly words: string;
  readonly room: string;
  readonly answer: Answer;
}

/** The return flange chart in words and a picture, ready to show and to print. */
export interface ChartShown {
  readonly sheet: string;
  readonly heads: readonly string[];
  readonly rows: readonly (readonly string[])[];
  /** The part's own channels, one sentence each. */
  readonly own: readonly string[];
  readonly sentence: string;
  readonly svg: string;
  readonly pages: readonly PaperPage[];
}

/** `others` are the texts of the shelf's other jobs, in the same unit: their brakes are ways out too. */
export type Question =
  | { readonly id: number; readonly kind: "check"; readonly text: string }
  | {
      readonly id: number;
      readonly kind: "ways";
      readonly text: string;
      readonly others: readonly string[];
    }
  | {
      readonly id: number;
      readonly kind: "blank";
      readonly text: string;
      readonly as: "svg" | "dxf" | "pages";
    }
  /** One brake for the parts of these jobs. */
  | {
      readonly id: number;
      readonly kind: "narrowBrake";
      readonly texts: readonly string[];
      readonly wishes: NarrowBrakeWishes;
    }
  | {
      readonly id: number;
      readonly kind: "fit";
      /** All in one unit. */
      readonly jobs: readonly string[];
      /** Brakes by the names to show, each in the job that has it. */
      readonly brakes: readonly { readonly name: string; readonly job: string }[];
    }
  | ({ readonly id: number; readonly kind: "scene" } & SceneAsked)
  | { readonly id: number; readonly kind: "chart"; readonly text: string }
  | { readonly id: number; readonly kind: "orders"; readonly text: string }
  | { readonly id: number; readonly kind: "sheet"; readonly text: string }
  | { readonly id: number; readonly kind: "write"; readonly text: string }
  /** A file's text as typed by hand, to be written as strict JSON. */
  | { readonly id: number; readonly kind: "plain"; readonly text: string }
  | {
      readonly id: number;
      readonly kind: "dxf";
      readonly text: string;
      readonly units: "mm" | "in";
      readonly drawnIn?: "mm" | "in";
    };

export type Reply =
  | { readonly id: number; readonly kind: "problems"; readonly problems: readonly Problem[] }
  | { readonly id: number; readonly kind: "answer"; readonly job: Job; readonly answer: Answer }
  | { readonly id: number; readonly kind: "whole"; readonly whole: WholeShown }
  | { readonly id: number; readonly kind: "scene"; readonly scene: SceneShown }
  | { readonly id: number; readonly kind: "ways"; readonly ways: readonly Way[] }
  | { readonly id: number; readonly kind: "written"; readonly text: string }
  | { readonly id: number; readonly kind: "dxf"; readonly read: DxfProfiles }
  | { readonly id: number; readonly kind: "narrowBrake"; readonly plans: NarrowBrakePlans }
  | { readonly id: number; readonly kind: "fit"; readonly fit: FitShown }
  | { readonly id: number; readonly kind: "chart"; readonly chart: ChartShown }
  | { readonly id: number; readonly kind: "orders"; readonly orders: OrdersShown }
  | { readonly id: number; readonly kind: "sheet"; readonly pages: readonly PaperPage[] }
  | { readonly id: number; readonly kind: "progress"; readonly words: string }
  /** Said by the page's side itself: the worker had stopped and another is at it. */
  | { readonly id: number; readonly kind: "restarted"; readonly sentence: string }
  | { readonly id: number; readonly kind: "failed"; readonly sentence: string };
