/**
 * The worksheet of a whole part, from top to bottom like that of a section: answer and drawing, part, brake, steps, blank,
 * jobs.
 */
import { CAUTIONS } from "../../src/words/cautions.ts";
import { BrakePanel } from "../panels/brakePanel.tsx";
import { Contents } from "../panels/contents.tsx";
import { Guarded } from "../panels/guarded.tsx";
import { Head } from "../panels/head.tsx";
import { JobsPanel } from "../panels/jobsPanel.tsx";
import { Notices } from "../panels/notices.tsx";
import { FingersPanel } from "./fingersPanel.tsx";
import { WholeAnswerPanel } from "./wholeAnswer.tsx";
import { WholeBlankPanel } from "./wholeBlankPanel.tsx";
import { WholePartPanel } from "./wholePartPanel.tsx";
import { WholeStage } from "./wholeStage.tsx";
import { WholeMind, WholeSteps } from "./wholeSteps.tsx";
import { WholeWaysPanel } from "./wholeWaysPanel.tsx";

const PLACES = [
  ["part-heading", "Part"],
  ["fingers-heading", "Fingers"],
  ["brake-heading", "Brake"],
  ["steps-heading", "Steps"],
  ["blank-heading", "Blank"],
  ["jobs-heading", "Jobs"],
] as const;

const PANELS = [WholePartPanel, FingersPanel, BrakePanel, WholeMind, WholeSteps, WholeBlankPanel];

export function WholeWorksheet() {
  return (
    <>
      <a class="skip" href="#part-heading">
        To your part
      </a>
      <Head />
      <main class="sheet">
        <div class="front">
          <div class="foremost">
            <WholeAnswerPanel />
            <Guarded>
              <WholeWaysPanel />
            </Guarded>
          </div>
          <Guarded>
            <WholeStage />
          </Guarded>
        </div>
        <div class="card">
          <Contents places={PLACES} />
          {PANELS.map((Panel, i) => (
            <Guarded key={i}>
              <Panel />
            </Guarded>
          ))}
          <JobsPanel />
          <footer class="cautions">
            <h2>Take care</h2>
            <p>{CAUTIONS}</p>
          </footer>
          <Notices />
        </div>
      </main>
    </>
  );
}
