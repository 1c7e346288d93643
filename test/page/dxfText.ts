/**
 * Little DXF drawings in text form, after the DXF reference: pairs of group code and value, one a line.
 */
type Pair = readonly [code: number, value: string | number];

const text = (pairs: readonly Pair[]) => pairs.map(([code, value]) => `${code}\n${value}\n`).join("");

/** A drawing with its unit ($INSUNITS: 1 inch, 4 mm) and its shapes. */
export function drawing(units: number, shapes: readonly string[]): string {
  const head = text([
    [0, "SECTION"],
    [2, "HEADER"],
    [9, "$INSUNITS"],
    [70, units],
    [0, "ENDSEC"],
    [0, "SECTION"],
    [2, "ENTITIES"],
  ]);
  return `${head}${shapes.join("")}${text([
    [0, "ENDSEC"],
    [0, "EOF"],
  ])}`;
}

export function line(x1: number, y1: number, x2: number, y2: number): string {
  return text([
    [0, "LINE"],
    [8, "0"],
    [10, x1],
    [20, y1],
    [30, 0],
    [11, x2],
    [21, y2],
    [31, 0],
  ]);
}

/** An arc, counter-clockwise, in degrees. */
export function arc(x: number, y: number, radius: number, fromDeg: number, toDeg: number): string {
  return text([
    [0, "ARC"],
    [8, "0"],
    [10, x],
    [20, y],
    [30, 0],
    [40, radius],
    [50, fromDeg],
    [51, toDeg],
  ]);
}

export function lwpolyline(
  vertices: readonly (readonly [x: number, y: number, bulge: number])[],
  closed: boolean,
): string {
  const corners = vertices.flatMap(([x, y, bulge]): Pair[] => [
    [10, x],
    [20, y],
    [42, bulge],
  ]);
  return text([[0, "LWPOLYLINE"], [8, "0"], [90, vertices.length], [70, closed ? 1 : 0], ...corners]);
}

/** Words with their place. */
export function words(x: number, y: number, written: string): string {
  return text([
    [0, "TEXT"],
    [8, "TEXT"],
    [10, x],
    [20, y],
    [40, 3],
    [1, written],
  ]);
}

/** A shape on another layer. */
export function onLayer(layer: string, shape: string): string {
  return shape.replace("\n8\n0\n", `\n8\n${layer}\n`);
}
