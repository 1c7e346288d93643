/**
 * Small signs on buttons, drawn here so that they look the same on every device. Always beside words or a label.
 */

const PATHS = {
  play: "M5 3.5L13 8L5 12.5Z",
  pause: "M4.5 3.5H7V12.5H4.5ZM9 3.5H11.5V12.5H9Z",
  back: "M12.5 3.5L6 8L12.5 12.5ZM3.5 3.5H5.2V12.5H3.5Z",
  forward: "M3.5 3.5L10 8L3.5 12.5ZM10.8 3.5H12.5V12.5H10.8Z",
  plus: "M7 3H9V7H13V9H9V13H7V9H3V7H7Z",
  minus: "M3 7H13V9H3Z",
  up: "M8 2.5L13 8H9.2V13.5H6.8V8H3Z",
  down: "M8 13.5L3 8H6.8V2.5H9.2V8H13Z",
  swap: "M2 5.5L5.5 2V4.5H14V6.5H5.5V9ZM14 10.5L10.5 14V11.5H2V9.5H10.5V7Z",
  cross: "M3.2 4.6L4.6 3.2L8 6.6L11.4 3.2L12.8 4.6L9.4 8L12.8 11.4L11.4 12.8L8 9.4L4.6 12.8L3.2 11.4L6.6 8Z",
  undo: "M6.5 2L2 6.2L6.5 10.4V7.4H9.4A2.4 2.4 0 0 1 9.4 12.2H5V14H9.4A4.2 4.2 0 0 0 9.4 5H6.5Z",
  redo: "M9.5 2L14 6.2L9.5 10.4V7.4H6.6A2.4 2.4 0 0 0 6.6 12.2H11V14H6.6A4.2 4.2 0 0 1 6.6 5H9.5Z",
  light: "M8 1.8A6.2 6.2 0 1 0 8 14.2A6.2 6.2 0 1 0 8 1.8ZM8 3.4A4.6 4.6 0 0 1 8 12.6Z",
  grip: "M4.5 3H6.5V5H4.5ZM9.5 3H11.5V5H9.5ZM4.5 7H6.5V9H4.5ZM9.5 7H11.5V9H9.5ZM4.5 11H6.5V13H4.5ZM9.5 11H11.5V13H9.5Z",
  twoStrokes: "M2 13.4L7 13.4L12.4 8L11.2 6.8L6.2 11.8H2ZM8.2 11.8L12.6 2.6L14 3.3L10 11.8H14V13.4H8.2Z",
  oneStroke: "M2 11.8H6.4L11.6 2.6L13 3.4L7.4 13.4H2Z",
  hand: "M5.2 8V3.4A.9.9 0 0 1 7 3.4V7H7.4V2.6A.9.9 0 0 1 9.2 2.6V7H9.6V3.4A.9.9 0 0 1 11.4 3.4V9.2L12.6 7.6A1 1 0 0 1 14 8.8L11.2 13.4A2 2 0 0 1 9.5 14.3H7.6A3.4 3.4 0 0 1 4.4 12L2.6 8.6A1 1 0 0 1 4.2 7.5Z",
  bendUp: "M2 11H11V3.5H13V13H2Z",
  bendDown: "M2 3H13V12.5H11V5H2Z",
  clear: "M2.6 8.4L4.2 6.8L6.6 9.2L12 3.6L13.5 5.2L6.6 12.4Z",
  tight: "M2 6.2Q5 3.4 8 5.6T14 5V7.2Q11 9.4 8 7.4T2 8.4ZM2 11Q5 8.4 8 10.6T14 10V12Q11 14.2 8 12.4T2 13.2Z",
} as const;

export type SignName = keyof typeof PATHS;

export function Sign({ name }: { readonly name: SignName }) {
  return (
    <svg class="icon" viewBox="0 0 16 16" aria-hidden="true" focusable="false">
      <path d={PATHS[name]} />
    </svg>
  );
}

/** The sign that goes with a verdict; always beside its words. */
export const VERDICT_SIGNS = { clear: "clear", tight: "tight", hits: "cross" } as const satisfies Record<
  string,
  SignName
>;
