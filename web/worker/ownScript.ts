/**
 * The only addresses that the page may load script from: its own two files, or the blob that it made of its own text.
 * Under the page's policy (trusted types) the browser refuses any other, and any text as markup, whoever asks.
 */

interface ScriptPolicy {
  createScriptURL(address: string): unknown;
}

interface TrustedTypes {
  createPolicy(name: string, rules: { createScriptURL: (address: string) => string }): ScriptPolicy;
}

let policy: ScriptPolicy | undefined;

/** The address as one that the browser accepts. @throws TypeError for any other address */
export function ownScript(address: string): string {
  const own = address === "page.js" || address === "offline.js" || address.startsWith(`blob:${self.origin}/`);
  if (!own) throw new TypeError("not a script of this page");
  const { trustedTypes } = globalThis as { trustedTypes?: TrustedTypes };
  policy ??= trustedTypes?.createPolicy("noseroom", { createScriptURL: (known) => known });
  // Where the browser knows no trusted types, the plain address is what it takes.
  return (policy?.createScriptURL(address) ?? address) as string;
}
