/**
 * Flats and bends as a strip of fields, flat 1 first, numbered as they count in the finished chain; which way a bend turns is seen
 * with the marked face up.
 */
import { Fragment } from "preact";
import { Field } from "../fields/field.tsx";
import { usePage } from "../page.ts";
import { flatPath, inChain } from "../store/chain.ts";
import { BendItem } from "./bendItem.tsx";
import { FlatEnds } from "./flatEnds.tsx";

export function ChainStrip({ onMark }: { readonly onMark: (flat: number | null) => void }) {
  const { snapshot } = usePage();
  const { file } = snapshot;
  const { flats } = file.part;
  return (
    <ol class="strip" aria-label="Flats and bends, in the order in which they lie on the sheet">
      {flats.map((_, i) => {
        const place = inChain(file.part, i);
        return (
          <Fragment key={i}>
            <li class="flat" onFocusCapture={() => onMark(place)} onBlurCapture={() => onMark(null)}>
              <Field label={`Flat ${place + 1}`} path={flatPath(file, place)} kind="length" />
              <FlatEnds index={i} />
            </li>
            {i < flats.length - 1 ? <BendItem index={i} /> : null}
          </Fragment>
        );
      })}
    </ol>
  );
}
