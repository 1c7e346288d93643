/**
 * A day of the calendar, chosen in the browser's own way, with a button for today.
 */
export function DayField({
  label,
  value,
  onChoose,
}: {
  readonly label: string;
  /** Year-month-day; undefined where none is given. */
  readonly value: string | undefined;
  readonly onChoose: (day: string | undefined) => void;
}) {
  const id = `day-${label.toLowerCase().replaceAll(" ", "-")}`;
  const now = new Date();
  const two = (n: number) => String(n).padStart(2, "0");
  // The day at the bench, which may not be that of the prime meridian.
  const today = `${now.getFullYear()}-${two(now.getMonth() + 1)}-${two(now.getDate())}`;
  return (
    <div class="field day">
      <label for={id}>{label}</label>
      <span class="boxes">
        <input
          id={id}
          type="date"
          max={today}
          value={value ?? ""}
          onChange={(event) => onChoose(event.currentTarget.value || undefined)}
        />
        <button type="button" aria-label={`${label}: today`} onClick={() => onChoose(today)}>
          Today
        </button>
      </span>
    </div>
  );
}
