/**
 * The drawing with its handles: leaf slider, play and pause, step back and forward, zoom; the flats' dimensions as
 * buttons to change them in place; and the step in words for those who hear it.
 */

import { useEffect, useLayoutEffect, useMemo, useRef, useState } from "preact/hooks";
import { angleWords } from "../../src/words/angleWords.ts";
import { capital } from "../../src/words/capital.ts";
import { contactWords } from "../../src/words/contactWords.ts";
import { faceWords, outcomeSentence, stepTitle, throatWords } from "../../src/words/stepWords.ts";
import { usePage } from "../page.ts";
import type { Frame } from "../stage/frame.ts";
import { wireGestures } from "../stage/gestures.ts";
import { litLabel, measuredFlats } from "../stage/measured.ts";
import { Player } from "../stage/player.ts";
import { Stage } from "../stage/stage.ts";
import { poseStep, type StepPose } from "../stage/stepPose.ts";
import { BeforeAfter, hasRoomBeside } from "./beforeAfter.tsx";
import { BesideStage } from "./besideStage.tsx";
import { FlatLabels } from "./flatLabels.tsx";
import { Sign } from "./sign.tsx";

const NOTHING: Frame = {
  pulledDeg: 0,
  heldDeg: 0,
  labels: [],
  camera: { scale: 1, originX: 0, originY: 0 },
  width: 1,
  height: 1,
};

/** Where the leaf stands, in words. */
function leafWords(pose: StepPose, frame: Frame): string {
  const { contact, overbend } = pose.step;
  if (contact && pose.stopDeg !== null && frame.pulledDeg >= pose.stopDeg - 0.05) {
    const pulled =
      frame.pulledDeg > pose.stopDeg + 0.05
        ? ` Pulled to ${angleWords(frame.pulledDeg)}, the hatched metal would have to give.`
        : "";
    return `Leaf stopped at ${angleWords(pose.stopDeg)}: ${contactWords(contact, pose.job.brake.clamp.kind)}.${pulled}`;
  }
  const leaf = `Leaf at ${angleWords(frame.heldDeg)} of ${angleWords(overbend)}`;
  return frame.heldDeg < pose.fromDeg
    ? `${leaf}; the bend lies at ${angleWords(pose.fromDeg)} until the leaf comes up to it.`
    : `${leaf}.`;
}

export function StagePanel() {
  const { standing, snapshot, look } = usePage();
  const { job, jobFile, answer } = standing;
  const { file } = snapshot;
  const { step, stageOpen, theme, asked, lit, seenWay } = look.now;
  const box = useRef<HTMLDivElement>(null);
  const back = useRef<HTMLCanvasElement>(null);
  const front = useRef<HTMLCanvasElement>(null);
  const stage = useRef<Stage | null>(null);
  const player = useRef<Player | null>(null);
  const [frame, setFrame] = useState<Frame>(NOTHING);
  const [playing, setPlaying] = useState(false);
  const pose = useMemo(() => (job && answer ? poseStep(job, answer, step) : null), [job, answer, step]);
  const measured = useMemo(() => (job && jobFile ? measuredFlats(jobFile, job) : []), [jobFile, job]);
  const shines = litLabel(lit, file.part);
  const current = useRef({ pose, count: answer?.order.length ?? 0, step });
  const shown = useRef<string>("");
  current.current = { pose, count: answer?.order.length ?? 0, step };

  useLayoutEffect(() => {
    const made = new Stage(box.current!, back.current!, front.current!, setFrame);
    stage.current = made;
    const reel = () => {
      const { pose: now, count, step: at } = current.current;
      return { count, step: at, reachedDeg: now?.step.reached ?? 0, stops: now?.step.verdict === "hits" };
    };
    const play = new Player(reel, {
      pull: (deg) => made.pull(deg),
      goTo: (to) => look.set({ step: to }),
      turn: (share, fresh) => made.turn(share, fresh),
      changed: setPlaying,
    });
    player.current = play;
    const unwire = wireGestures(front.current!, made, () => play.pause());
    const media = matchMedia("(prefers-color-scheme: dark)");
    const dark = () => made.readTheme();
    media.addEventListener("change", dark);
    // Paper is white whatever the light: the drawing is painted anew for it.
    const onPaper = (printing: boolean) => () => {
      look.showForPaper(printing);
      made.setForPaper(printing);
    };
    const [before, after] = [onPaper(true), onPaper(false)];
    addEventListener("beforeprint", before);
    addEventListener("afterprint", after);
    return () => {
      media.removeEventListener("change", dark);
      removeEventListener("beforeprint", before);
      removeEventListener("afterprint", after);
      play.pause();
      unwire();
      made.close();
    };
  }, []);

  // Before the next frame, so that a step that is played begins without a flash of its end.
  useLayoutEffect(() => {
    const name = pose ? `${pose.step.bend} ${pose.step.clamped} ${step}` : "";
    stage.current?.show(pose);
    if (playing && name !== shown.current) stage.current?.pull(0);
    shown.current = name;
  }, [pose, asked]);

  useEffect(() => stage.current?.measure(measured), [measured]);

  useEffect(() => stage.current?.light(shines), [shines]);

  useEffect(() => stage.current?.readTheme(), [theme]);

  const count = answer?.order.length ?? 0;
  const goTo = (to: number) => {
    player.current?.pause();
    look.set({ step: to });
  };
  const toggle = () => {
    if (playing) player.current?.pause();
    else player.current?.play(stage.current?.pulledDeg ?? 0);
  };
  const pull = (deg: number) => {
    player.current?.pause();
    stage.current?.pull(deg);
  };
  /** On a phone the folded drawing is a strip; anywhere else it is open already. */
  const openStrip = () => {
    if (!stageOpen && matchMedia("(max-width: 640px)").matches) look.set({ stageOpen: true });
  };
  const bendCount = job?.part.bends.length ?? 0;
  const stopped = pose?.stopDeg != null && frame.pulledDeg >= pose.stopDeg - 0.05;
  const where = pose ? leafWords(pose, frame) : "";

  return (
    <section id="drawing" class={`stage${stageOpen ? " open" : ""}`} aria-labelledby="stage-heading">
      <h2 id="stage-heading" class="heard">
        Drawing
      </h2>
      <div class="drawn">
        {/* biome-ignore lint/a11y/noStaticElementInteractions: a thumb on the folded strip opens it; the button below does the same */}
        {/* biome-ignore lint/a11y/useKeyWithClickEvents: the button below is for the keys */}
        <div class={`canvas-box${stopped ? " stopped" : ""}`} ref={box} onClick={openStrip}>
          <canvas ref={back} />
          <canvas
            ref={front}
            role="img"
            tabIndex={0}
            aria-label={
              pose
                ? `Section through brake and sheet, step ${step + 1}. Arrow keys move the paper, plus and minus enlarge it, 0 fits it.`
                : "Section through brake and sheet"
            }
          />
          <FlatLabels labels={frame.labels} measured={measured} lit={shines} />
          {pose ? (
            <p class="throat">
              {capital(throatWords(pose.step, bendCount))} in the throat, {faceWords(pose.step)}
            </p>
          ) : null}
        </div>
        {seenWay && hasRoomBeside() ? (
          <div class="over-stage">
            <BeforeAfter way={seenWay} />
          </div>
        ) : null}
        <BesideStage pose={pose} frame={frame} measured={measured} lit={shines} />
      </div>
      <div class="handles">
        <label class="leaf">
          <span>Leaf</span>
          <input
            type="range"
            min={0}
            max={pose?.endDeg ?? 90}
            step={0.1}
            value={frame.pulledDeg}
            disabled={pose === null}
            aria-valuetext={where || "no step"}
            onInput={(event) => pull(event.currentTarget.valueAsNumber)}
          />
          <output>{angleWords(frame.heldDeg)}</output>
        </label>
        <span class="row tight">
          <button type="button" disabled={step <= 0} aria-label="Step back" onClick={() => goTo(step - 1)}>
            <Sign name="back" />
          </button>
          <button
            type="button"
            disabled={pose === null}
            aria-label={playing ? "Pause" : "Play"}
            onClick={toggle}
          >
            <Sign name={playing ? "pause" : "play"} />
          </button>
          <button
            type="button"
            disabled={pose === null || playing}
            aria-label="All: play the whole fold from the flat blank"
            onClick={() => player.current?.tell()}
          >
            All
          </button>
          <button
            type="button"
            disabled={step + 1 >= count}
            aria-label="Step forward"
            onClick={() => goTo(step + 1)}
          >
            <Sign name="forward" />
          </button>
          <span class="row tight eye">
            <button type="button" aria-label="Smaller" onClick={() => stage.current?.zoom(0.8)}>
              <Sign name="minus" />
            </button>
            <button type="button" aria-label="Larger" onClick={() => stage.current?.zoom(1.25)}>
              <Sign name="plus" />
            </button>
            <button type="button" aria-label="Fit the drawing" onClick={() => stage.current?.fit()}>
              Fit
            </button>
          </span>
          <button
            type="button"
            class="fold narrow-only"
            aria-expanded={stageOpen}
            onClick={() => look.set({ stageOpen: !stageOpen })}
          >
            {stageOpen ? "Fold the drawing" : "Open the drawing"}
          </button>
        </span>
      </div>
      <p class={`where${stopped ? " stopped" : ""}`}>{where}</p>
      {pose && job ? (
        <p class="account">
          Step {step + 1} of {count}. {stepTitle(pose.step, bendCount).replaceAll(" · ", ", ")}.{" "}
          {outcomeSentence(pose.step, job.units, job.brake.clamp.kind)}
        </p>
      ) : null}
    </section>
  );
}
