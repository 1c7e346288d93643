/** The job files of examples/ as text, by name. */
declare module "noseroom:examples" {
  const examples: Readonly<Record<string, string>>;
  export default examples;
}
