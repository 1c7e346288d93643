/**
 * From a section to more than a section: ends along its length, or a box in its place.
 */
import { usePage } from "../page.ts";
import { asBox, withEnds } from "../store/wholeEdits.ts";

export function MorePart() {
  const { store } = usePage();
  return (
    <div class="row">
      <button type="button" onClick={() => store.replace(withEnds, "give the section ends")}>
        Give it ends
      </button>
      <button type="button" onClick={() => store.replace(asBox, "make it a box")}>
        Make it a box
      </button>
    </div>
  );
}
