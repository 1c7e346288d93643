/**
 * The photo with its marks: click to set, drag to move, arrow keys and Delete on a mark, a key to add one without a
 * pointer. Works in the picture's own points, so that enlarging changes nothing.
 */
import { useRef, useState } from "preact/hooks";
import type { Spot } from "../trace/traced.ts";

export type Mode = "scale" | "square" | "outline" | "level";
type Marks = Readonly<Record<Mode, readonly Spot[]>>;

interface Props {
  readonly picture: { readonly address: string; readonly width: number; readonly height: number };
  readonly mode: Mode;
  readonly marks: Marks;
  readonly onChange: (marks: Marks, remember: boolean) => void;
  /** What a click did, in words. */
  readonly onSay: (words: string) => void;
}

const NAMES: Readonly<Record<Mode, string>> = {
  scale: "Ruler point",
  square: "Rectangle corner",
  outline: "Outline point",
  level: "Underside point",
};
const MODES: readonly Mode[] = ["scale", "square", "outline", "level"];
/** How many marks a mode takes; one more takes the place of the oldest. */
const MOST: Readonly<Record<Mode, number>> = {
  scale: 2,
  square: 4,
  outline: Number.POSITIVE_INFINITY,
  level: 2,
};

export function TracePicture({ picture, mode, marks, onChange, onSay }: Props) {
  const svg = useRef<SVGSVGElement>(null);
  const [zoom, setZoom] = useState(1);
  const dragged = useRef<{ readonly mode: Mode; readonly index: number } | null>(null);
  const { width, height } = picture;
  const dot = Math.max(width, height) / 140 / zoom;

  const spot = (event: PointerEvent): Spot => {
    const box = svg.current!.getBoundingClientRect();
    const x = ((event.clientX - box.left) / box.width) * width;
    const y = ((event.clientY - box.top) / box.height) * height;
    return { x: Math.min(Math.max(x, 0), width), y: Math.min(Math.max(y, 0), height) };
  };
  const put = (of: Mode, spots: readonly Spot[], remember: boolean) =>
    onChange({ ...marks, [of]: spots }, remember);
  const add = (at: Spot) => {
    const full = marks[mode].length >= MOST[mode];
    put(mode, full ? [...marks[mode].slice(1), at] : [...marks[mode], at], true);
    const count = full ? MOST[mode] : marks[mode].length + 1;
    onSay(
      full
        ? `There are only ${MOST[mode]} of these: the oldest was taken away for the new one.`
        : `${NAMES[mode]} ${count} is set.`,
    );
  };
  const move = (of: Mode, index: number, dx: number, dy: number) =>
    put(
      of,
      marks[of].map((s, i) => (i === index ? { x: s.x + dx, y: s.y + dy } : s)),
      true,
    );

  const key = (event: KeyboardEvent, of: Mode, index: number) => {
    const step = event.shiftKey ? 10 : 1;
    const moves: Record<string, readonly [number, number]> = {
      ArrowLeft: [-step, 0],
      ArrowRight: [step, 0],
      ArrowUp: [0, -step],
      ArrowDown: [0, step],
    };
    const by = moves[event.key];
    if (by) move(of, index, by[0], by[1]);
    else if (event.key === "Delete" || event.key === "Backspace")
      put(of, marks[of].toSpliced(index, 1), true);
    else return;
    event.preventDefault();
  };

  return (
    <>
      {/* biome-ignore lint/a11y/noNoninteractiveTabindex: an enlarged photo must be scrolled with the keys too */}
      <section class="photo" tabIndex={0} aria-label="The photo, to be scrolled when enlarged">
        {/* biome-ignore lint/a11y/useSemanticElements: marks on a picture; a fieldset can't stand for an svg */}
        <svg
          ref={svg}
          viewBox={`0 0 ${width} ${height}`}
          style={{ width: `${zoom * 100}%` }}
          role="group"
          aria-label={`Marks on the photo: ${marks.scale.length} on the ruler, ${marks.square.length} on the rectangle, ${marks.outline.length} on the outline, ${marks.level.length} on the underside`}
          onPointerDown={(event) => {
            if (event.button !== 0 || dragged.current) return;
            add(spot(event));
          }}
          onPointerMove={(event) => {
            const grip = dragged.current;
            if (grip === null) return;
            const at = spot(event);
            put(
              grip.mode,
              marks[grip.mode].map((s, i) => (i === grip.index ? at : s)),
              false,
            );
          }}
          onPointerUp={() => {
            dragged.current = null;
          }}
        >
          <image href={picture.address} width={width} height={height} />
          <polygon
            class="trace-outline"
            points={marks.outline.map((s) => `${s.x},${s.y}`).join(" ")}
            stroke-width={dot / 2}
          />
          {MODES.flatMap((of) =>
            marks[of].map((s, i) => (
              // biome-ignore lint/a11y/useSemanticElements: there is no button element inside an svg
              <g
                key={`${of}${i}`}
                class={`trace-mark ${of}${of === mode ? " on" : ""}`}
                tabIndex={0}
                role="button"
                aria-label={`${NAMES[of]} ${i + 1}, ${Math.round(s.x)} across, ${Math.round(s.y)} down. Arrow keys move it, Delete takes it away`}
                onKeyDown={(event) => key(event, of, i)}
                onPointerDown={(event) => {
                  event.stopPropagation();
                  onChange(marks, true);
                  dragged.current = { mode: of, index: i };
                  onSay(
                    `You hold ${NAMES[of].toLowerCase()} ${i + 1}: drag it. To set another mark, click farther away or enlarge the photo.`,
                  );
                  svg.current?.setPointerCapture(event.pointerId);
                }}
              >
                <circle class="reach" cx={s.x} cy={s.y} r={dot * 2.2} />
                <circle class="dot" cx={s.x} cy={s.y} r={dot} stroke-width={dot / 2.5} />
                <path
                  d={`M${s.x - dot} ${s.y}H${s.x + dot}M${s.x} ${s.y - dot}V${s.y + dot}`}
                  stroke-width={dot / 5}
                />
              </g>
            )),
          )}
        </svg>
      </section>
      <div class="row">
        <label class="leaf">
          <span>Enlarge</span>
          <input
            type="range"
            min={1}
            max={6}
            step={0.25}
            value={zoom}
            onInput={(event) => setZoom(event.currentTarget.valueAsNumber)}
          />
        </label>
        <button type="button" onClick={() => add({ x: width / 2, y: height / 2 })}>
          Set a mark in the middle
        </button>
      </div>
    </>
  );
}
