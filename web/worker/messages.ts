/**
 * What the page and its worker say to each other. Plain data only; a job goes over as the file's own text, so that
 * page and command read it with the same reader.
 */
import type { Answer } from "../../src/job/answer.ts";
import type { Job } from "../../src/job/job.ts";
import type { JobFile } from "../../src/job/schema.ts";
import type { DxfProfiles } from "../dxf/profileFromDxf.ts";

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

/** `others` are the texts of the shelf's other jobs, in the same unit: their brakes are ways out too. */
export type Question =
  | { readonly id: number; readonly kind: "check"; readonly text: string }
  | {
      readonly id: number;
      readonly kind: "ways";
      readonly text: string;
      readonly others: readonly string[];
    }
  | { readonly id: number; readonly kind: "blank"; readonly text: string; readonly as: "svg" | "dxf" }
  | { readonly id: number; readonly kind: "write"; readonly text: string }
  | { readonly id: number; readonly kind: "dxf"; readonly text: string; readonly units: "mm" | "in" };

export type Reply =
  | { readonly id: number; readonly kind: "problems"; readonly problems: readonly Problem[] }
  | { readonly id: number; readonly kind: "answer"; readonly job: Job; readonly answer: Answer }
  | { readonly id: number; readonly kind: "ways"; readonly ways: readonly Way[] }
  | { readonly id: number; readonly kind: "written"; readonly text: string }
  | { readonly id: number; readonly kind: "dxf"; readonly read: DxfProfiles }
  | { readonly id: number; readonly kind: "progress"; readonly words: string }
  | { readonly id: number; readonly kind: "failed"; readonly sentence: string };
