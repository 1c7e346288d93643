/// <reference path="../../src/jobFile/dxf.d.ts" />
/**
 * Reads DXF text back with an independent library (dxf), as lines, arcs, circles and words on their layers.
 */
import { parseString } from "dxf";

export interface ReadEntity {
  readonly type: string;
  readonly layer: string;
  readonly start?: { readonly x: number; readonly y: number };
  readonly end?: { readonly x: number; readonly y: number };
  readonly x?: number;
  readonly y?: number;
  readonly r?: number;
  readonly startAngle?: number;
  readonly endAngle?: number;
  readonly string?: string;
  readonly rotation?: number;
}

/** All entities of a DXF file in their order, and the code of its unit ($INSUNITS: 4 is millimetres). */
export function readDxf(text: string): {
  readonly unit: number | undefined;
  readonly entities: readonly ReadEntity[];
} {
  const read = parseString(text) as unknown as {
    readonly header: { readonly insUnits?: number };
    readonly entities: readonly ReadEntity[];
  };
  return { unit: read.header.insUnits, entities: read.entities };
}
