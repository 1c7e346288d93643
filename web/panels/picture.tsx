/**
 * A drawing as a picture of its own file, so that nothing of it becomes part of the page; small to fit, or large to read.
 */
import { useEffect, useState } from "preact/hooks";

export function Picture({
  svg,
  words,
  name,
  fine = false,
}: {
  readonly svg: string;
  readonly words: string;
  readonly name: string;
  /** Fine enough to be worth a larger view. */
  readonly fine?: boolean;
}) {
  const [address, setAddress] = useState<string | null>(null);
  const [large, setLarge] = useState(false);
  useEffect(() => {
    const made = URL.createObjectURL(new Blob([svg], { type: "image/svg+xml" }));
    setAddress(made);
    return () => URL.revokeObjectURL(made);
  }, [svg]);
  if (address === null) return null;
  const box = large ? "plan-box large" : "plan-box";
  return (
    <>
      {/* biome-ignore lint/a11y/noNoninteractiveTabindex: what is larger than its box must be scrolled with the keys too */}
      <section class={box} tabIndex={0} aria-label={name}>
        <img class="plan" src={address} alt={words} />
      </section>
      {fine ? (
        <div class="row">
          <button type="button" aria-pressed={large} onClick={() => setLarge(!large)}>
            Drawing large enough to read
          </button>
        </div>
      ) : null}
    </>
  );
}
