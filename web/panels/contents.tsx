/**
 * Contents along the card: where one is, and a press to anywhere else. Follows the scroll.
 */
import { useEffect, useState } from "preact/hooks";

const PLACES = [
  ["part-heading", "Part"],
  ["brake-heading", "Brake"],
  ["steps-heading", "Steps"],
  ["blank-heading", "Blank"],
  ["fit-heading", "Shop"],
  ["narrow-heading", "Narrow brake"],
  ["jobs-heading", "Jobs"],
] as const;

type Places = readonly (readonly [id: string, words: string])[];

/** The last heading that has passed the upper third of the window. */
function placeNow(places: Places): string {
  const line = innerHeight / 3;
  const passed = places.filter(([id]) => {
    const heading = document.getElementById(id);
    return heading !== null && heading.getBoundingClientRect().top < line;
  });
  return passed.at(-1)?.[0] ?? places[0]![0];
}

export function Contents({ places = PLACES }: { readonly places?: Places }) {
  const [now, setNow] = useState<string>(places[0]![0]);
  useEffect(() => {
    let asked = 0;
    const look = () => {
      cancelAnimationFrame(asked);
      asked = requestAnimationFrame(() => setNow(placeNow(places)));
    };
    addEventListener("scroll", look, { passive: true });
    return () => {
      cancelAnimationFrame(asked);
      removeEventListener("scroll", look);
    };
  }, []);
  return (
    <nav class="contents" aria-label="Contents">
      <ul>
        {places.map(([id, words]) => (
          <li key={id}>
            <a href={`#${id}`} aria-current={id === now ? "true" : undefined}>
              {words}
            </a>
          </li>
        ))}
      </ul>
    </nav>
  );
}
