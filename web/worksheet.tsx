/**
 * The worksheet from top to bottom, like a job card: answer and drawing, then part, brake, steps, blank, and what
 * to do if it does not fold. On a wide screen answer and drawing stay at the left while the card scrolls.
 */
import { CAUTIONS } from "../src/words/cautions.ts";
import { usePage } from "./page.ts";
import { AnswerPanel, WarningsPanel } from "./panels/answerPanel.tsx";
import { BlankPanel } from "./panels/blankPanel.tsx";
import { BrakePanel } from "./panels/brakePanel.tsx";
import { ChartPanel } from "./panels/chartPanel.tsx";
import { ComparePanel } from "./panels/comparePanel.tsx";
import { Contents } from "./panels/contents.tsx";
import { FitPanel } from "./panels/fitPanel.tsx";
import { Guarded } from "./panels/guarded.tsx";
import { Head } from "./panels/head.tsx";
import { JobsPanel } from "./panels/jobsPanel.tsx";
import { NarrowBrakePanel } from "./panels/narrowBrakePanel.tsx";
import { Notices } from "./panels/notices.tsx";
import { PartPanel } from "./panels/partPanel.tsx";
import { SamplePanel } from "./panels/samplePanel.tsx";
import { StagePanel } from "./panels/stagePanel.tsx";
import { StepsPanel } from "./panels/stepsPanel.tsx";
import { WaysPanel } from "./panels/waysPanel.tsx";
import { Welcome } from "./panels/welcome.tsx";
import { isWhole } from "./store/wholeFile.ts";
import { WholeWorksheet } from "./whole/wholeWorksheet.tsx";

export function Worksheet() {
  const { snapshot } = usePage();
  if (isWhole(snapshot.file.part)) return <WholeWorksheet />;
  return (
    <>
      <a class="skip" href="#part-heading">
        To your part
      </a>
      <Head />
      <main class="sheet">
        <div class="front">
          <div class="foremost">
            <AnswerPanel />
            <Guarded>
              <WaysPanel />
            </Guarded>
          </div>
          <Guarded>
            <StagePanel />
          </Guarded>
        </div>
        <div class="card">
          <Contents />
          <Welcome />
          <Guarded>
            <PartPanel />
          </Guarded>
          <Guarded>
            <SamplePanel />
          </Guarded>
          <Guarded>
            <BrakePanel />
          </Guarded>
          <Guarded>
            <WarningsPanel />
          </Guarded>
          <Guarded>
            <StepsPanel />
          </Guarded>
          <Guarded>
            <BlankPanel />
          </Guarded>
          <Guarded>
            <FitPanel />
          </Guarded>
          <Guarded>
            <NarrowBrakePanel />
          </Guarded>
          <Guarded>
            <ChartPanel />
          </Guarded>
          <Guarded>
            <ComparePanel />
          </Guarded>
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
