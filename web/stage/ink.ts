/**
 * The colours of the drawing, read from the style sheet, so that day and night are decided in one place.
 */

export interface Ink {
  readonly paper: string;
  readonly ink: string;
  readonly graphite: string;
  readonly fine: string;
  readonly steel: string;
  readonly hatch: string;
  readonly tint: string;
  readonly signal: string;
  readonly press: string;
  /** The line along the marked face, over the sheet. */
  readonly marked: string;
}

/** The colours that hold for an element now. */
export function inkOf(element: Element): Ink {
  const style = getComputedStyle(element);
  const read = (name: string) => style.getPropertyValue(`--${name}`).trim();
  return {
    paper: read("drawing"),
    ink: read("ink"),
    graphite: read("graphite"),
    fine: read("fine"),
    steel: read("steel"),
    hatch: read("hatch"),
    tint: read("tint"),
    signal: read("signal"),
    press: read("press"),
    marked: read("marked"),
  };
}
