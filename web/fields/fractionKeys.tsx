/**
 * The two signs of a fraction that the numeric keypad of a phone lacks, beside the box that is typed in.
 */
import type { RefObject } from "preact";

export function FractionKeys({
  label,
  box,
  onType,
}: {
  readonly label: string;
  readonly box: RefObject<HTMLInputElement | null>;
  readonly onType: (text: string) => void;
}) {
  const insert = (sign: string) => {
    const input = box.current;
    if (input === null) return;
    const from = input.selectionStart ?? input.value.length;
    const to = input.selectionEnd ?? from;
    onType(input.value.slice(0, from) + sign + input.value.slice(to));
    input.focus();
    requestAnimationFrame(() => input.setSelectionRange(from + 1, from + 1));
  };
  return (
    <span class="fraction-keys">
      <button type="button" aria-label={`Fraction slash into ${label}`} onClick={() => insert("/")}>
        ⁄
      </button>
      <button type="button" aria-label={`Space into ${label}`} onClick={() => insert(" ")}>
        ␣
      </button>
    </span>
  );
}
