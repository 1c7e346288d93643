/** The worker as the build hands it to the page: a file beside it, or its text inside the single file. */
declare module "noseroom:worker" {
  const source: { readonly address: string } | { readonly text: string };
  export default source;
}

/** The job files of examples/ as text, by name. */
declare module "noseroom:examples" {
  const examples: Readonly<Record<string, string>>;
  export default examples;
}
