/**
 * The signs that the numeric keypad of a phone lacks, beside the box that is typed in: minus, and for inches the slash
 * and the space of a fraction.
 */
import type { RefObject } from "preact";

const MINUS = [["-", "−", "Minus sign"]] as const;
const FRACTION = [["/", "⁄", "Fraction slash"], [" ", "␣", "Space"], ...MINUS] as const;

export function SignKeys({
  label,
  box,
  onType,
  fractions,
}: {
  readonly label: string;
  readonly box: RefObject<HTMLInputElement | null>;
  readonly onType: (text: string) => void;
  readonly fractions: boolean;
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
      {(fractions ? FRACTION : MINUS).map(([sign, shown, name]) => (
        <button
          key={sign}
          type="button"
          aria-label={`${name} into ${label}`}
          // The box keeps the hand, so that the keypad stays up.
          onPointerDown={(event) => event.preventDefault()}
          onClick={() => insert(sign)}
        >
          {shown}
        </button>
      ))}
    </span>
  );
}
