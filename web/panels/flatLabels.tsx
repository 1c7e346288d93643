/**
 * The flats' figures in their dimension lines on the drawing, as buttons; pressing one opens its field in place. The bends'
 * numbers beside them.
 */

import { useEffect, useRef, useState } from "preact/hooks";
import type { Placed } from "../drafting/asked.ts";
import { asTyped, echo } from "../fields/typed.ts";
import { usePage } from "../page.ts";
import type { MeasuredFlat } from "../stage/measured.ts";
import { chainFlats, flatPath } from "../store/chain.ts";
import { getAt, type Typed } from "../store/jobFile.ts";

export function FlatLabels({
  labels,
  measured,
  lit,
}: {
  readonly labels: readonly Placed[];
  readonly measured: readonly MeasuredFlat[];
  readonly lit: string | null;
}) {
  const { store, snapshot } = usePage();
  const { file } = snapshot;
  const { units } = file;
  const flats = chainFlats(file.part);
  const [open, setOpen] = useState<number | null>(null);
  const field = useRef<HTMLInputElement>(null);
  useEffect(() => {
    if (open === null) return;
    field.current?.focus();
    field.current?.select();
  }, [open]);

  return (
    <div class="flat-labels">
      {labels.map(({ key, box, whole }) => {
        const [kind, index] = key.split(" ");
        const flat = Number(index);
        const size = { width: `${2 * box.halfWide}px`, height: `${2 * box.halfHigh}px` };
        const place = {
          transform: `translate(${box.x.toFixed(1)}px, ${box.y.toFixed(1)}px) translate(-50%, -50%)`,
        };
        if ((kind !== "flat" && kind !== "bend") || flat >= flats) return null;
        if (kind === "bend") {
          return (
            <span key={key} class="bend-label" style={{ ...size, ...place }} aria-hidden="true">
              {flat + 1}
            </span>
          );
        }
        if (open === flat) {
          const path = flatPath(file, flat);
          const value = getAt(file, path) as Typed;
          const name = path.at(-1) === "offset" ? "Offset height" : `Flat ${flat + 1}`;
          return (
            <span key={key} class="flat-label" style={place}>
              <input
                ref={field}
                type="text"
                inputMode="decimal"
                aria-label={`${name}, on the drawing. ${echo(value, "length", units)}`}
                value={String(value)}
                maxLength={80}
                onInput={(event) =>
                  store.set(path, asTyped(event.currentTarget.value), `change ${name.toLowerCase()}`, true)
                }
                onBlur={() => setOpen(null)}
                onKeyDown={(event) => {
                  if (event.key === "Enter" || event.key === "Escape") setOpen(null);
                }}
              />
            </span>
          );
        }
        const words = measured[flat]?.words ?? "?";
        return (
          <button
            key={key}
            type="button"
            class={`flat-label${lit === key ? " lit" : ""}`}
            style={{ ...size, ...place }}
            aria-label={`Flat ${flat + 1} is ${words} ${units}. Change it here`}
            onClick={() => setOpen(flat)}
          >
            <span class="number" data-number={flat + 1} />
            {whole ? <span>{words}</span> : null}
          </button>
        );
      })}
    </div>
  );
}
