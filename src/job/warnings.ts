/** The foreman's warnings. */
import type { Step } from "../contact/step.ts";
import type { Job } from "./job.ts";
export function warningsFor(_job: Job, _steps: readonly Step[]): string[] {
  return [];
}
