/**
 * How each layer looks on a page: graphite lines of two weights, brake members told apart by hatch angle, part in ink.
 * The signal colour belongs to contact alone, and never comes without its hatch, its cross and its words.
 * `page(n)` in the rules is n millimetres on the page, written in drawing millimetres.
 */

/** Ink and paper by day, then at night under a lamp; text on paper passes WCAG AA (4.5 : 1) in both. */
const DAY =
  "--paper:#fbf8f1;--ink:#17191c;--graphite:#41454b;--fine:#6b6f75;--steel:#e4e6e8;--tint:#d5cdb9;--dye:#1d4a73;--scribe:#f6f4ec;--signal:#b4261c";
const NIGHT =
  "--paper:#1b1c1e;--ink:#f1ece0;--graphite:#c3c0b8;--fine:#95938d;--steel:#2b2e31;--tint:#4b4638;--dye:#1d4a73;--scribe:#f6f4ec;--signal:#ff8a75";
/** On paper the dye would only waste ink: dark lines on white. */
const PRINT = "--paper:#fff;--dye:none;--scribe:#17191c";

/** Hatch angle of each member in degrees, and the distance of its lines on the page. */
const HATCHES: readonly (readonly [layer: string, angleDeg: number, spacing: number, ink: string])[] = [
  ["bed", 45, 2.2, "fine"],
  ["clamp", -45, 2.2, "fine"],
  ["leaf", 15, 2.2, "fine"],
  ["frame", 75, 3.2, "fine"],
  ["waste", -15, 4, "fine"],
  ["contact", 60, 0.9, "signal"],
];

/** Pattern definitions; hatches keep their angle and spacing on the page whatever the enlargement. */
export function hatchPatterns(pageMm: number): string {
  const page = (mm: number) => Number((mm * pageMm).toFixed(4));
  return HATCHES.map(
    ([layer, angleDeg, spacing, ink]) =>
      `<pattern id="hatch-${layer}" patternUnits="userSpaceOnUse" width="${page(spacing)}" height="${page(spacing)}" patternTransform="rotate(${-angleDeg})"><path class="hatch ${ink}" d="M0 ${page(spacing / 2)}H${page(spacing)}"/></pattern>`,
  ).join("\n");
}

/** The style block. Weights are 0.5 mm and 0.18 mm on the page. With `onPaper` ink on white, whatever the screen's light. */
export function styleRules(pageMm: number, onPaper = false): string {
  const page = (mm: number) => Number((mm * pageMm).toFixed(4));
  const heavy = page(0.5);
  const light = page(0.18);
  return [
    `svg{${DAY};background:var(--paper)}`,
    onPaper ? "" : `@media (prefers-color-scheme:dark){svg{${NIGHT}}}`,
    onPaper ? `svg{${PRINT}}` : `@media print{svg{${DAY};${PRINT}}}`,
    `path{fill:none;stroke:var(--graphite);stroke-width:${light};stroke-linejoin:round;stroke-linecap:round}`,
    onPaper
      ? 'text{font-family:Helvetica,Arial,"Liberation Sans",sans-serif!important}.bold{font-weight:700}'
      : "",
    `text{fill:var(--ink);font-family:system-ui,-apple-system,"Segoe UI",Roboto,"Noto Sans",sans-serif;font-variant-numeric:tabular-nums;paint-order:stroke;stroke:var(--paper);stroke-width:${page(0.9)};stroke-linejoin:round}`,
    `.hatch{stroke-width:${light}}.hatch.fine{stroke:var(--fine)}.hatch.signal{stroke:var(--signal);stroke-width:${page(0.25)}}`,
    ".paper{fill:var(--paper);stroke:none}",
    ...["bed", "clamp", "leaf", "frame"].map(
      (layer) =>
        `.${layer} .body{fill:var(--steel);stroke:none}.${layer} .face{fill:url(#hatch-${layer});stroke-width:${heavy}}`,
    ),
    `.part .face{fill:var(--ink);stroke:none}.part path{stroke:var(--ink);stroke-width:${heavy}}`,
    `.partBefore .face{stroke-dasharray:${page(2)} ${page(1.2)};stroke-width:${light}}`,
    ".swept{opacity:.55}.swept .face{fill:var(--tint);stroke:none}",
    `.contact path{stroke:var(--signal);stroke-width:${heavy}}.contact .face{fill:url(#hatch-contact);stroke-width:${light}}`,
    ".contact text{fill:var(--signal);font-weight:600}",
    `.clearance path,.dimension path{stroke:var(--ink);stroke-width:${light}}.clearance .head,.dimension .head{fill:var(--ink);stroke:none}`,
    `.cut .face{fill:var(--dye);stroke:var(--ink);stroke-width:${heavy}}.cut path{stroke-width:${heavy}}`,
    `.bendUp path,.bendDown path,.bendTangent path,.sightLine path{stroke:var(--scribe)}`,
    `.bendUp path{stroke-dasharray:${page(6)} ${page(1.2)} ${page(1)} ${page(1.2)}}.bendDown path{stroke-dasharray:${page(3)} ${page(1.5)}}`,
    `.sightLine path{stroke-width:${heavy}}`,
    ".bendUp text,.bendDown text,.grain text{fill:var(--scribe);stroke:none}.grain path{stroke:var(--scribe)}",
    `.face .face{fill:var(--paper);stroke-width:${page(0.3)}}.edge path{stroke-width:${page(0.3)}}`,
    `.hidden path{stroke-dasharray:${page(2)} ${page(1.2)}}.centre path{stroke-dasharray:${page(6)} ${page(1.2)} ${page(1)} ${page(1.2)}}`,
    ".waste .face{fill:url(#hatch-waste)}",
    ".note .face{fill:var(--paper);stroke:none}.note path{stroke:var(--ink)}",
  ].join("\n");
}
