/**
 * The flats' dimensions beside the flats on the drawing, as buttons; pressing one opens its field in place.
 */

import { useEffect, useRef, useState } from "preact/hooks";
import { asTyped, echo, lengthLabel, readMm } from "../fields/typed.ts";
import { usePage } from "../page.ts";
import type { FlatLabel } from "../stage/labels.ts";
import { sizeOf, sizePath } from "../store/flats.ts";

/** A dimension as it stands on the drawing: the person's own words where they can be read. */
function dimensionWords(value: unknown, units: "mm" | "in"): string {
  const mm = readMm(value, "length", units);
  return mm === undefined ? "?" : lengthLabel(mm, units).replace(/ (in|mm)$/, "");
}

export function FlatLabels({ labels }: { readonly labels: readonly FlatLabel[] }) {
  const { store, snapshot } = usePage();
  const { file } = snapshot;
  const { units, part } = file;
  const [open, setOpen] = useState<number | null>(null);
  const field = useRef<HTMLInputElement>(null);
  useEffect(() => {
    if (open === null) return;
    field.current?.focus();
    field.current?.select();
  }, [open]);

  return (
    <div class="flat-labels">
      {labels.map(({ kind, index: flat, x, y }) => {
        const value = sizeOf(part.flats[flat]);
        if (part.flats[flat] === undefined) return null;
        const style = { transform: `translate(${x.toFixed(1)}px, ${y.toFixed(1)}px) translate(-50%, -50%)` };
        if (kind === "bend") {
          return (
            <span key={`bend ${flat}`} class="bend-label" style={style} aria-hidden="true">
              {flat + 1}
            </span>
          );
        }
        if (open === flat) {
          return (
            <span key={flat} class="flat-label" style={style}>
              <input
                ref={field}
                type="text"
                inputMode="decimal"
                aria-label={`Flat ${flat + 1}, on the drawing. ${echo(value, "length", units)}`}
                value={String(value)}
                maxLength={80}
                onInput={(event) =>
                  store.set(
                    sizePath(file, flat),
                    asTyped(event.currentTarget.value),
                    `change flat ${flat + 1}`,
                    true,
                  )
                }
                onBlur={() => setOpen(null)}
                onKeyDown={(event) => {
                  if (event.key === "Enter" || event.key === "Escape") setOpen(null);
                }}
              />
            </span>
          );
        }
        const words = dimensionWords(value, units);
        return (
          <button
            key={flat}
            type="button"
            class="flat-label"
            style={style}
            aria-label={`Flat ${flat + 1} is ${words} ${units}. Change it here`}
            onClick={() => setOpen(flat)}
          >
            <span data-number={flat + 1}>{words}</span>
          </button>
        );
      })}
    </div>
  );
}
