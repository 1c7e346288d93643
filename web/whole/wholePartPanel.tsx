/**
 * The whole part: metal and sheet, then the sizes of the box, the section with its ends, or the drawn pattern, and its plan.
 */
import { usePage } from "../page.ts";
import { MetalFields } from "../panels/metalFields.tsx";
import { BoxForm } from "./boxForm.tsx";
import { EndsForm, Measured } from "./endsForm.tsx";
import { PatternForm } from "./patternForm.tsx";

export function WholePartPanel() {
  const { snapshot, standing } = usePage();
  const { box, pattern } = snapshot.file.part;
  const { whole } = standing;
  const isSection = !box && !pattern;
  return (
    <section class="panel" aria-labelledby="part-heading">
      <h2 id="part-heading">Part</h2>
      <MetalFields known={whole} length={isSection} />
      {pattern ? null : <Measured />}
      {box ? <BoxForm /> : pattern ? <PatternForm /> : <EndsForm />}
    </section>
  );
}
