/**
 * The head of the sheet: name, undo and redo, units and light.
 */

import { inUnit } from "../../src/jobFile/inUnit.ts";
import { Choice } from "../fields/choice.tsx";
import type { Theme } from "../look.ts";
import { usePage } from "../page.ts";
import { sampleInUnit } from "../store/sample.ts";
import { Sign } from "./sign.tsx";

const UNITS = [
  { value: "in", words: "in" },
  { value: "mm", words: "mm" },
] as const;

const NEXT: Readonly<Record<Theme, Theme>> = { auto: "light", light: "dark", dark: "auto" };
const LIGHT: Readonly<Record<Theme, string>> = {
  auto: "Light: as the device",
  light: "Light: day",
  dark: "Light: night",
};

export function Head() {
  const { store, snapshot, look } = usePage();
  const { canUndo, canRedo, file, sample } = snapshot;
  return (
    <header class="head">
      <div class="named">
        <h1>Noseroom</h1>
        <p>Will it fold on your hand leaf brake, in which order, and what to change if not.</p>
      </div>
      <div class="row">
        <button
          type="button"
          disabled={canUndo === null}
          onClick={() => store.undo()}
          aria-label={canUndo ? `Undo: ${canUndo}` : "Undo"}
          title={canUndo ?? ""}
        >
          <Sign name="undo" /> <span class="wide-only">Undo</span>
        </button>
        <button
          type="button"
          disabled={canRedo === null}
          onClick={() => store.redo()}
          aria-label={canRedo ? `Redo: ${canRedo}` : "Redo"}
          title={canRedo ?? ""}
        >
          <Sign name="redo" /> <span class="wide-only">Redo</span>
        </button>
        <Choice
          label="Units"
          quiet
          options={UNITS}
          value={file.units}
          onChoose={(to) =>
            store.copy(
              inUnit(file, to),
              sample ? sampleInUnit(sample, file.units, to) : undefined,
              `switch to ${to === "in" ? "inches" : "millimetres"}`,
            )
          }
        />
        <button
          type="button"
          onClick={() => look.set({ theme: NEXT[look.now.theme] })}
          aria-label={LIGHT[look.now.theme]}
          title={LIGHT[look.now.theme]}
        >
          <Sign name="light" />
        </button>
      </div>
    </header>
  );
}
