/** The little that is used of the dxf library, which comes without types. */
declare module "dxf" {
  /** Reads a DXF file in text form into header variables and shapes. */
  export function parseString(text: string): {
    readonly header: Readonly<Record<string, unknown>>;
    readonly entities: readonly unknown[];
  };
}
