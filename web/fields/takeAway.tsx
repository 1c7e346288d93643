/**
 * The small button at a row's end that takes something away, said in full for those who hear the page.
 */
import { Sign } from "../panels/sign.tsx";

export function TakeAway({
  what,
  disabled = false,
  onClick,
}: {
  /** "corner 3". */
  readonly what: string;
  readonly disabled?: boolean;
  readonly onClick: () => void;
}) {
  return (
    <button
      type="button"
      class="quiet"
      disabled={disabled}
      aria-label={`Take ${what} away`}
      onClick={onClick}
    >
      <Sign name="cross" />
    </button>
  );
}
