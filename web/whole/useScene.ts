/**
 * The scene that a stage shows, asked of a worker of its own: the newest wish counts, the one before is drawn to its end, so
 * that the picture moves on while a hand is faster than the drawing.
 */
import { useEffect, useRef, useState } from "preact/hooks";
import { Asker } from "../worker/asker.ts";
import type { SceneAsked, SceneShown } from "./scenes.ts";

const PATIENCE_MS = 30_000;
/** The fine drawing comes once nothing has moved for so long. */
const REST_MS = 150;

export function useScene(asked: SceneAsked | null): SceneShown | null {
  const [scene, setScene] = useState<SceneShown | null>(null);
  const asker = useRef<Asker | null>(null);
  const key =
    asked && [asked.text, asked.stroke, asked.leafDeg, asked.leftDeg, asked.aboveDeg, asked.station].join();
  useEffect(() => () => asker.current?.stop(), []);
  useEffect(() => {
    if (asked === null) return;
    asker.current ??= new Asker(PATIENCE_MS);
    const ask = (moving: boolean) =>
      asker.current?.ask({ kind: "scene", ...asked, moving }, (reply) => {
        if (reply.kind === "scene") setScene(reply.scene);
      });
    ask(asked.moving);
    if (!asked.moving) return;
    const rest = setTimeout(() => ask(false), REST_MS);
    return () => clearTimeout(rest);
  }, [key]);
  return scene;
}
