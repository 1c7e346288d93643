/**
 * A drawing as a picture of its own file, so that nothing of it becomes part of the page; small to fit, or large to read.
 */
import { useEffect, useRef, useState } from "preact/hooks";

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
  const view = useRef<HTMLElement>(null);
  useEffect(() => {
    // The middle of the sheet, where the views are; its corners are empty.
    const { current } = view;
    if (large && current) current.scrollTo(current.scrollWidth / 8, current.scrollHeight / 3);
  }, [large]);
  if (address === null) return null;
  const box = large ? "plan-box large" : "plan-box";
  return (
    <>
      {/* biome-ignore lint/a11y/noNoninteractiveTabindex: what is larger than its box must be scrolled with the keys too */}
      <section ref={view} class={box} tabIndex={0} aria-label={name}>
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
