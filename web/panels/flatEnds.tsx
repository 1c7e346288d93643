/**
 * Which edge of a bend a flat was measured to, at each of its ends, with a picture of the three.
 */
import { Pick } from "../fields/choice.tsx";
import { usePage } from "../page.ts";
import { inChain } from "../store/chain.ts";
import { type FlatEdge, withEdge } from "../store/flats.ts";

const EDGES = [
  { value: "usual", words: "as the part" },
  { value: "outside", words: "outside" },
  { value: "inside", words: "inside" },
  { value: "tangent", words: "bend tangent line" },
] as const;

/** The corner of a bend with the rule held to its outside, its inside, or where it begins. */
export function EdgePicture({ edge }: { readonly edge: FlatEdge }) {
  const at = { outside: 88, inside: 76, tangent: 58 }[edge];
  return (
    <svg class="edge-picture" viewBox="0 0 120 64" aria-hidden="true">
      <path class="body" d="M6 44H58Q76 44 76 26V4H88V30Q88 56 62 56H6Z" />
      <path class="dim" d={`M6 40V16M${at} ${edge === "tangent" ? 40 : 2}V16M6 22H${at}M${at} 12V60`} />
    </svg>
  );
}

export function FlatEnds({ index }: { readonly index: number }) {
  const { store, snapshot } = usePage();
  const { file } = snapshot;
  const flat = file.part.flats[index];
  const { dimensions, bends } = file.part;
  if (flat === undefined) return null;
  const usual: FlatEdge = dimensions === "flat" ? "tangent" : dimensions;
  const number = inChain(file.part, index) + 1;
  const edges: { readonly from?: FlatEdge; readonly to?: FlatEdge } = typeof flat === "object" ? flat : {};
  const ends = [
    { end: "from", bend: number - 1, there: index > 0 },
    { end: "to", bend: number, there: index < bends.length },
  ] as const;
  return (
    <details class="more">
      <summary aria-label={`More of flat ${number}`}>more</summary>
      {ends
        .filter(({ there }) => there)
        .map(({ end, bend }) => (
          <div key={end}>
            <Pick
              label={`Flat ${number} at bend ${bend}, to`}
              options={EDGES}
              value={edges[end] ?? "usual"}
              onChoose={(value) =>
                store.set(
                  ["part", "flats", index],
                  withEdge(flat, end, value === "usual" ? undefined : value),
                  `say how flat ${number} was measured`,
                )
              }
            />
            <EdgePicture edge={edges[end] ?? usual} />
          </div>
        ))}
    </details>
  );
}
