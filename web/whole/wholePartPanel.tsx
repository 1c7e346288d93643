/**
 * The whole part: metal and sheet, then the sizes of the box, the section with its ends, or the drawn pattern.
 */
import { usePage } from "../page.ts";
import { MetalFields } from "../panels/metalFields.tsx";

export function WholePartPanel() {
  const { snapshot, standing } = usePage();
  const { part } = snapshot.file;
  const { whole } = standing;
  return (
    <section class="panel" aria-labelledby="part-heading">
      <h2 id="part-heading">Part</h2>
      <MetalFields known={whole} length={part.ends !== undefined || part.spans !== undefined} />
    </section>
  );
}
