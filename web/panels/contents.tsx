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

/** The last heading that has passed the upper third of the window. */
function placeNow(): string {
  const line = innerHeight / 3;
  const passed = PLACES.filter(([id]) => {
    const heading = document.getElementById(id);
    return heading !== null && heading.getBoundingClientRect().top < line;
  });
  return passed.at(-1)?.[0] ?? PLACES[0][0];
}

export function Contents() {
  const [now, setNow] = useState<string>(PLACES[0][0]);
  useEffect(() => {
    let asked = 0;
    const look = () => {
      cancelAnimationFrame(asked);
      asked = requestAnimationFrame(() => setNow(placeNow()));
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
        {PLACES.map(([id, words]) => (
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
