/**
 * The drawing of a whole part: the part in the brake, to be turned by dragging or with the arrow keys; the section at a
 * station; the row of fingers from the front. The leaf is pulled by its slider, and the story plays stroke by stroke.
 */
import { useEffect, useMemo, useRef, useState } from "preact/hooks";
import { angleWords } from "../../src/words/angleWords.ts";
import { lengthWords } from "../../src/words/lengthWords.ts";
import { usePage } from "../page.ts";
import { Sign } from "../panels/sign.tsx";
import { Player } from "../stage/player.ts";
import { fileText } from "../store/jobFile.ts";
import { SketchOf } from "./sketch.tsx";
import { dragged, keyed, SIDES_SEEN, type Turned } from "./turned.ts";
import { useScene } from "./useScene.ts";

export function WholeStage() {
  const { standing, look, snapshot } = usePage();
  const { whole, file } = standing;
  const { step, stageOpen, asked } = look.now;
  const { units } = snapshot.file;
  const [turned, setTurned] = useState<Turned>(SIDES_SEEN[0].turned);
  /** Null as far as the leaf comes, and where it is worst. */
  const [leafDeg, setLeaf] = useState<number | null>(null);
  const [station, setStation] = useState<number | null>(null);
  const [playing, setPlaying] = useState(false);
  const [holding, setHolding] = useState(false);
  const held = useRef<{ readonly x: number; readonly y: number; readonly from: Turned } | null>(null);
  const text = useMemo(() => (file ? fileText(file) : ""), [file]);
  const stroke = whole?.answer.order[step];
  const scene = useScene(
    whole && stroke
      ? { text, answer: whole.answer, stroke: step, leafDeg, ...turned, station, moving: playing || holding }
      : null,
  );
  const order = whole?.answer.order ?? [];
  const now = useRef({ order, step });
  now.current = { order, step };
  const player = useRef<Player | null>(null);
  player.current ??= new Player(
    () => {
      const { order: steps, step: at } = now.current;
      const { reached = 0, verdict } = steps[at] ?? {};
      return { count: steps.length, step: at, reachedDeg: reached, stops: verdict === "hits" };
    },
    {
      pull: setLeaf,
      goTo: (to) => {
        setLeaf(0);
        look.set({ step: to });
      },
      turn: () => setLeaf(0),
      changed: setPlaying,
    },
  );
  useEffect(() => () => player.current?.pause(), []);
  // Another answer, or its own moment asked for: the worst of it is shown.
  useEffect(() => {
    player.current?.pause();
    setLeaf(null);
    setStation(null);
  }, [whole, asked]);
  useEffect(() => setStation(null), [step]);

  if (whole === null || !stroke) return <section id="drawing" class="stage" aria-label="Drawing" />;
  const goTo = (to: number) => {
    player.current?.pause();
    setLeaf(null);
    look.set({ step: to });
  };
  const toggle = () => {
    if (playing) player.current?.pause();
    else player.current?.play(leafDeg ?? stroke.reached);
  };
  const end = () => {
    held.current = null;
    setHolding(false);
  };
  const say = (mm: number) => lengthWords(mm, units);
  const leaf = leafDeg ?? stroke.reached;
  const stopped = stroke.contact !== null && leaf >= stroke.reached - 0.05;
  const { title, sentences } = whole.strokes[step]!;
  return (
    <section
      id="drawing"
      class={`stage whole-stage${stageOpen ? " open" : ""}`}
      aria-labelledby="stage-heading"
    >
      <h2 id="stage-heading" class="heard">
        Drawing
      </h2>
      <div class="drawn">
        {/* biome-ignore lint/a11y/noStaticElementInteractions: the picture inside takes the keys, the buttons below turn it too */}
        <div
          class={`canvas-box turns${stopped ? " stopped" : ""}`}
          onPointerDown={(event) => {
            held.current = { x: event.clientX, y: event.clientY, from: turned };
            event.currentTarget.setPointerCapture(event.pointerId);
            setHolding(true);
          }}
          onPointerMove={({ clientX, clientY }) => {
            if (!held.current) return;
            setTurned(dragged(held.current.from, clientX - held.current.x, clientY - held.current.y));
          }}
          onPointerUp={end}
          onPointerCancel={end}
          onKeyDown={(event) => {
            const next = keyed(turned, event.key);
            if (!next) return;
            event.preventDefault();
            setTurned(next);
          }}
        >
          {scene ? (
            <SketchOf sketch={{ ...scene.view, sentence: viewWords(title) }} name="view" focusable />
          ) : (
            <p class="waiting">The drawing is being made.</p>
          )}
        </div>
        {scene ? (
          <div class="beside">
            <figure>
              <SketchOf
                sketch={{
                  ...scene.section,
                  sentence: `${title}: section ${say(scene.station)} from the left end.`,
                }}
                name="section"
              />
              <figcaption>Section</figcaption>
            </figure>
            <figure>
              <SketchOf sketch={scene.fingers} name="fingers" />
              <figcaption>Fingers from the front</figcaption>
            </figure>
          </div>
        ) : null}
      </div>
      <div class="handles">
        <label class="leaf">
          <span>Leaf</span>
          <input
            type="range"
            min={0}
            max={stroke.reached}
            step={0.1}
            value={leaf}
            onInput={(event) => {
              player.current?.pause();
              setLeaf(event.currentTarget.valueAsNumber);
            }}
          />
          <output>{angleWords(leaf)}</output>
        </label>
        {scene ? (
          <label class="leaf">
            <span>Section</span>
            <input
              type="range"
              min={scene.span[0]}
              max={scene.span[1]}
              step={0.1}
              value={scene.station}
              aria-valuetext={`${say(scene.station)} from the left end of the bend line`}
              onInput={(event) => setStation(event.currentTarget.valueAsNumber)}
            />
            <output>{say(scene.station)}</output>
          </label>
        ) : null}
        <span class="row tight">
          <button type="button" disabled={step <= 0} aria-label="Step back" onClick={() => goTo(step - 1)}>
            <Sign name="back" />
          </button>
          <button type="button" aria-label={playing ? "Pause" : "Play"} onClick={toggle}>
            <Sign name={playing ? "pause" : "play"} />
          </button>
          <button
            type="button"
            disabled={playing}
            aria-label="All: play the whole fold from the flat blank"
            onClick={() => player.current?.tell()}
          >
            All
          </button>
          <button
            type="button"
            disabled={step + 1 >= order.length}
            aria-label="Step forward"
            onClick={() => goTo(step + 1)}
          >
            <Sign name="forward" />
          </button>
          <button
            type="button"
            class="fold narrow-only"
            aria-expanded={stageOpen}
            onClick={() => look.set({ stageOpen: !stageOpen })}
          >
            {stageOpen ? "Fold the drawing" : "Open the drawing"}
          </button>
        </span>
        <span class="row tight eye">
          {SIDES_SEEN.map(({ name, turned: to }) => (
            <button
              key={name}
              type="button"
              class="quiet"
              aria-pressed={to.leftDeg === turned.leftDeg && to.aboveDeg === turned.aboveDeg}
              onClick={() => setTurned(to)}
            >
              {name}
            </button>
          ))}
        </span>
      </div>
      <p class="account">
        <strong>{title}</strong>. {sentences.join(" ")}
      </p>
    </section>
  );
}

function viewWords(title: string): string {
  return `${title}: the part in the brake. Arrow keys turn it.`;
}
