/** Corners of an upright rectangle as a job file's profile has them, anticlockwise from the lower left. */
export function rectangle(left: number, low: number, right: number, high: number): [number, number][] {
  return [
    [left, low],
    [right, low],
    [right, high],
    [left, high],
  ];
}
