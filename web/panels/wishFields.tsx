/**
 * Safety factors, hand force, vise and give of a brake to be made: what is taken stands in the empty boxes, and each may be
 * changed.
 */
import { asTyped } from "../fields/typed.ts";
import { usePage } from "../page.ts";
import { usualWishes, WISHES, wishNumber } from "../store/wishes.ts";

const USUAL = usualWishes();
/** Newtons of one pound-force, exact by definition (ISO 80000-4). */
const NEWTONS_PER_POUND = 4.448_221_615_260_5;

export function WishFields() {
  const { store, snapshot } = usePage();
  const { shelf, file } = snapshot;
  const wishes = shelf.wishes ?? {};
  const type = (key: (typeof WISHES)[number]["key"], label: string, text: string) => {
    const { [key]: _old, ...rest } = wishes;
    store.wish(text.trim() === "" ? rest : { ...rest, [key]: asTyped(text) }, label);
  };
  return (
    <details class="more">
      <summary>Safety factors, forces, give: open to change</summary>
      <div class="fields">
        {WISHES.map(({ key, label, unit }) => {
          const typed = wishes[key];
          const value = wishNumber(typed);
          const id = `wish-${key}`;
          const pounds =
            unit === "N" && file.units === "in" ? (value ?? USUAL[key]) / NEWTONS_PER_POUND : null;
          const said =
            value === null
              ? `It should be a number above 0, such as ${USUAL[key]}.`
              : pounds === null
                ? ""
                : `${value ?? USUAL[key]} N = ${pounds.toFixed(0)} lbf`;
          return (
            <div key={key} class={`field kind-factor${value === null ? " wrong" : ""}`}>
              <label for={id}>
                {label}
                {unit === "" ? null : <span class="unit"> {unit}</span>}
              </label>
              <span class="boxes">
                <input
                  id={id}
                  type="text"
                  inputMode="decimal"
                  autocomplete="off"
                  maxLength={80}
                  value={typed === undefined ? "" : String(typed)}
                  placeholder={String(USUAL[key])}
                  aria-invalid={value === null ? "true" : undefined}
                  aria-describedby={said ? `${id}-b` : undefined}
                  onInput={(event) => type(key, label, event.currentTarget.value)}
                />
              </span>
              {said ? (
                <span class={`below ${value === null ? "problem" : "echo"}`} id={`${id}-b`}>
                  {said}
                </span>
              ) : null}
            </div>
          );
        })}
      </div>
      <p class="note">
        1.67 on yield is that of allowable-stress steel design (AISC); the others are common practice, no
        source. Less makes a lighter brake, and a weaker one.
      </p>
    </details>
  );
}
