/**
 * One bend of the strip: its angle and which way it turns, or what a hem or an offset is made by; overbend, a radius of its own
 * and what kind of bend it is fold away until wanted.
 */
import { Pick } from "../fields/choice.tsx";
import { Field } from "../fields/field.tsx";
import { usePage } from "../page.ts";
import { type BendKind, kindOf, withKind } from "../store/bendKinds.ts";
import { inChain } from "../store/chain.ts";
import { flatsAfterRemoval, removeBend } from "../store/chainEdits.ts";
import { pathId } from "../store/flats.ts";
import { movedSample } from "../store/sample.ts";
import { BendPicture } from "./bendPicture.tsx";
import { Sign } from "./sign.tsx";

const HEMS = [
  { value: "closed", words: "a closed hem" },
  { value: "open", words: "an open hem" },
  { value: "teardrop", words: "a teardrop hem" },
] as const;
const BENDS = [
  { value: "angle", words: "bent, angle from flat" },
  { value: "included", words: "bent, angle between flats" },
  { value: "offset", words: "an offset (joggle)" },
] as const;

/** What a bend of the file is called by its numbers in the chain. */
function nameOf(number: number, kind: BendKind): string {
  return kind === "offset" ? `bends ${number} and ${number + 1}` : `bend ${number}`;
}

export function BendItem({ index }: { readonly index: number }) {
  const { store, snapshot } = usePage();
  const { file, sample } = snapshot;
  const { part } = file;
  const bend = part.bends[index];
  if (bend === undefined) return null;
  const number = inChain(part, index) + 1;
  const other = bend.turn === "up" ? "down" : "up";
  const kind = kindOf(bend);
  const named = nameOf(number, kind);
  const Named = named.replace("b", "B");
  const at = (key: string) => ["part", "bends", index, key];
  const atEdge = index === 0 || index === part.bends.length - 1;
  const isPick = (
    <Pick
      id={pathId(at("hem"))}
      label={`${Named} ${kind === "offset" ? "are" : "is"}`}
      options={atEdge || bend.hem ? [...BENDS, ...HEMS] : BENDS}
      value={kind}
      onChoose={(next) => store.replace((now) => withKind(now, index, next), `say what ${named} is`)}
    />
  );
  return (
    <li class="bend">
      {bend.hem ? isPick : null}
      {kind === "offset" ? (
        <Field
          label={`Offset, ${named}`}
          path={at("offset")}
          kind="length"
          note="Height over the outside faces"
        />
      ) : null}
      {bend.hem && kind !== "closed" ? (
        <Field
          label={`Gap, ${named}`}
          path={at("gap")}
          kind="length"
          optional="the sheet’s thickness"
          note="Between the two layers"
        />
      ) : null}
      {bend.hem ? null : (
        <Field label={Named} unit="°" path={at(kind === "included" ? "included" : "angle")} kind="angle" />
      )}
      {kind === "angle" ? null : <BendPicture kind={kind} />}
      <div class="row tight">
        <button
          type="button"
          class={`turn ${bend.turn}`}
          aria-label={`${Named} ${kind === "offset" ? "turn" : "turns"} ${bend.turn}. Change to ${other}`}
          onClick={() => store.set(at("turn"), other, `turn ${named} ${other}`)}
        >
          <Sign name={bend.turn === "up" ? "bendUp" : "bendDown"} /> {bend.turn}
        </button>
        <button
          type="button"
          class="quiet"
          disabled={part.bends.length < 2}
          aria-label={`Take ${named} away, with flat ${inChain(part, index + 1) + 1}`}
          onClick={() =>
            store.copy(
              removeBend(file, index),
              sample ? movedSample(sample, flatsAfterRemoval(part, index)) : undefined,
              `take ${named} away`,
            )
          }
        >
          <Sign name="cross" />
        </button>
      </div>
      <details class="more">
        <summary aria-label={`More of ${named}`}>more</summary>
        {bend.hem ? null : (
          <>
            {isPick}
            {kind === "angle" ? <BendPicture kind={kind} /> : null}
            <Field
              label={`Overbend to, ${named}`}
              unit="°"
              path={at("overbend")}
              kind="angle"
              optional="worked out"
            />
          </>
        )}
        <Field
          label={`Inside radius, ${named}`}
          path={at("insideRadius")}
          kind="length"
          optional="the part’s"
          {...(bend.hem ? { note: "Of the fold, before it is flattened" } : {})}
        />
        {bend.hem ? null : (
          <Field
            label={`Deduction, ${named}`}
            path={at("deduction")}
            kind="length"
            optional="worked out"
            note="From a test strip: what the bend takes off the two flats"
          />
        )}
      </details>
    </li>
  );
}
