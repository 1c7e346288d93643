/**
 * How each layer looks on a page: graphite lines of two weights, brake members told apart by hatch angle, part in ink.
 * The signal colour belongs to contact alone, and never comes without its hatch, its cross and its words.
 * `page(n)` in the rules is n millimetres on the page, written in drawing millimetres.
 */

import type { Deg } from "../units/quantity.ts";
import { hatchOf } from "./hatch.ts";
import type { Layer, Mark } from "./model.ts";

/** Ink and paper by day, then at night under a lamp; text on paper passes WCAG AA (4.5 : 1) in both. */
export const DAY = {
  paper: "#fbf8f1",
  ink: "#17191c",
  graphite: "#41454b",
  fine: "#6b6f75",
  steel: "#e4e6e8",
  tint: "#d5cdb9",
  dye: "#1d4a73",
  scribe: "#f6f4ec",
  signal: "#b4261c",
} as const;
export type Palette = Readonly<Record<keyof typeof DAY, string>>;
export const NIGHT: Palette = {
  paper: "#1b1c1e",
  ink: "#f1ece0",
  graphite: "#c3c0b8",
  fine: "#95938d",
  steel: "#2b2e31",
  tint: "#4b4638",
  dye: "#1d4a73",
  scribe: "#f6f4ec",
  signal: "#ff8a75",
};
/** On paper the dye would only waste ink: dark lines on white. */
const PRINT: Palette = { ...DAY, paper: "#fff", dye: "none", scribe: "#17191c" };

/** The name of a hatch inside a picture. @example hatchName("bed", 45) // "hatch-bed-45" */
export function hatchName(layer: Layer, angleDeg: Deg): string {
  return `hatch-${layer}-${Number(angleDeg.toFixed(1))}`;
}

/** Pattern definitions of the bodies among the marks; hatches keep angle and spacing on the page whatever the enlargement. */
export function hatchPatterns(marks: readonly Mark[], pageMm: number): string {
  const page = (mm: number) => Number((mm * pageMm).toFixed(4));
  const patterns = new Map<string, string>();
  for (const mark of marks) {
    const hatch = mark.kind === "outline" ? hatchOf(mark.layer, mark.outline) : undefined;
    if (hatch === undefined) continue;
    const id = hatchName(mark.layer, hatch.angleDeg);
    const spacing = page(hatch.spacingMm);
    const ink = mark.layer === "contact" ? "signal" : "fine";
    patterns.set(
      id,
      `<pattern id="${id}" patternUnits="userSpaceOnUse" width="${spacing}" height="${spacing}" patternTransform="rotate(${Number((-hatch.angleDeg).toFixed(1))})"><path class="hatch ${ink}" d="M0 ${page(hatch.spacingMm / 2)}H${spacing}"/></pattern>`,
    );
  }
  return [...patterns.values()].join("\n");
}

/**
 * The style block. Weights are 0.5 mm and 0.18 mm on the page. With `onPaper` ink on white, whatever the screen's light.
 * Colours stand in the rules themselves, those for night and print after them, so that a reader of plain SVG draws it.
 */
export function styleRules(pageMm: number, onPaper = false): string {
  if (onPaper) {
    const words =
      'text{font-family:Helvetica,Arial,"Liberation Sans",sans-serif!important}.bold{font-weight:700}';
    return [...rules(pageMm, PRINT), words].join("\n");
  }
  const only = (media: string, palette: Palette) => {
    const day = new Set(rules(pageMm, DAY));
    return `@media ${media}{${rules(pageMm, palette)
      .filter((rule) => !day.has(rule))
      .join("")}}`;
  };
  return [...rules(pageMm, DAY), only("(prefers-color-scheme:dark)", NIGHT), only("print", PRINT)].join("\n");
}

function rules(pageMm: number, c: Palette): string[] {
  const page = (mm: number) => Number((mm * pageMm).toFixed(4));
  const heavy = page(0.5);
  const light = page(0.18);
  return [
    `svg{background:${c.paper}}`,
    `path{fill:none;stroke:${c.graphite};stroke-width:${light};stroke-linejoin:round;stroke-linecap:round}`,
    `text{fill:${c.ink};font-family:system-ui,-apple-system,"Segoe UI",Roboto,"Noto Sans",sans-serif;font-variant-numeric:tabular-nums;paint-order:stroke;stroke:${c.paper};stroke-width:${page(0.9)};stroke-linejoin:round}`,
    `.hatch{stroke-width:${light}}.hatch.fine{stroke:${c.fine}}.hatch.signal{stroke:${c.signal};stroke-width:${page(0.25)}}`,
    `.paper{fill:${c.paper};stroke:none}`,
    ...["bed", "clamp", "leaf", "frame"].map(
      (layer) => `.${layer} .body{fill:${c.steel};stroke:none}.${layer} .face{stroke-width:${heavy}}`,
    ),
    `.part .face{fill:${c.ink};stroke:none}.part path{stroke:${c.ink};stroke-width:${heavy}}`,
    `.partBefore .face{stroke-dasharray:${page(2)} ${page(1.2)};stroke-width:${light}}`,
    `.swept{opacity:.55}.swept .face{fill:${c.tint};stroke:none}`,
    `.contact path{stroke:${c.signal};stroke-width:${heavy}}.contact .face{stroke-width:${light}}`,
    `.contact text{fill:${c.signal};font-weight:600}`,
    `.clearance path,.dimension path{stroke:${c.ink};stroke-width:${light}}.clearance .head,.dimension .head{fill:${c.ink};stroke:none}`,
    `.cut .face{fill:${c.dye};stroke:${c.ink};stroke-width:${heavy}}.cut path{stroke-width:${heavy}}`,
    `.bendUp path,.bendDown path,.bendTangent path,.sightLine path{stroke:${c.scribe}}`,
    `.bendUp path{stroke-dasharray:${page(6)} ${page(1.2)} ${page(1)} ${page(1.2)}}.bendDown path{stroke-dasharray:${page(3)} ${page(1.5)}}`,
    `.sightLine path{stroke-width:${heavy}}`,
    `.bendUp text,.bendDown text,.grain text{fill:${c.scribe};stroke:none}.grain path{stroke:${c.scribe}}`,
    `.face .face{fill:${c.paper};stroke-width:${page(0.3)}}.edge path{stroke-width:${page(0.3)}}`,
    `.hidden path{stroke-dasharray:${page(2)} ${page(1.2)}}.centre path{stroke-dasharray:${page(6)} ${page(1.2)} ${page(1)} ${page(1.2)}}`,
    `.note .face{fill:${c.paper};stroke:none}.note path{stroke:${c.ink}}`,
  ];
}
