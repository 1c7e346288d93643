/** The job files of examples/, gathered by build.mjs: name without ".json" to the file's text. */
declare module "noseroom:examples" {
  const examples: Readonly<Record<string, string>>;
  export default examples;
}
/** What each example teaches, one line each, from examples/README.md. */
declare module "noseroom:example-lines" {
  const lines: Readonly<Record<string, string>>;
  export default lines;
}
/** The shop files of examples/shop/, and what each teaches. */
declare module "noseroom:example-shops" {
  const shops: {
    readonly texts: Readonly<Record<string, string>>;
    readonly lines: Readonly<Record<string, string>>;
  };
  export default shops;
}
/** The jobs of whole parts in examples/whole/, and what each teaches. */
declare module "noseroom:example-wholes" {
  const wholes: {
    readonly texts: Readonly<Record<string, string>>;
    readonly lines: Readonly<Record<string, string>>;
  };
  export default wholes;
}
/** The package's version, put in by build.mjs. */
declare const NOSEROOM_VERSION: string;
