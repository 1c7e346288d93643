/** The job files of examples/, gathered by build.mjs: name without ".json" to the file's text. */
declare module "noseroom:examples" {
  const examples: Readonly<Record<string, string>>;
  export default examples;
}
/** The package's version, put in by build.mjs. */
declare const NOSEROOM_VERSION: string;
