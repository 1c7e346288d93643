/**
 * Hands on the stage: drag the leaf, drag the paper, pinch, wheel and keys. Calls the stage's verbs, knows no drawing.
 */
import type { Point } from "../../src/plane/point.ts";
import type { Stage } from "./stage.ts";

const KEY_PAN = 40;

/** Wires one stage to its canvas; returns a function that unwires it. `onHand` is called when the leaf is taken. */
export function wireGestures(canvas: HTMLElement, stage: Stage, onHand: () => void): () => void {
  const fingers = new Map<number, Point>();
  let grip: { readonly startDeg: number; readonly startPulled: number } | null = null;
  let spread = 0;

  const spot = (event: PointerEvent | WheelEvent): Point => {
    const box = canvas.getBoundingClientRect();
    return { x: event.clientX - box.left, y: event.clientY - box.top };
  };
  const middle = (): Point => {
    const all = [...fingers.values()];
    return {
      x: all.reduce((s, p) => s + p.x, 0) / all.length,
      y: all.reduce((s, p) => s + p.y, 0) / all.length,
    };
  };
  const apart = (): number => {
    const [a, b] = [...fingers.values()];
    return a && b ? Math.hypot(a.x - b.x, a.y - b.y) : 0;
  };

  const down = (event: PointerEvent) => {
    const at = spot(event);
    fingers.set(event.pointerId, at);
    canvas.setPointerCapture(event.pointerId);
    if (fingers.size === 2) {
      grip = null;
      spread = apart();
    } else if (stage.isOnLeaf(at)) {
      grip = { startDeg: stage.angleAt(at), startPulled: stage.pulledDeg };
      onHand();
    }
  };
  const move = (event: PointerEvent) => {
    const at = spot(event);
    const before = fingers.get(event.pointerId);
    if (before === undefined) {
      canvas.style.cursor = stage.isOnLeaf(at) ? "grab" : "";
      return;
    }
    const from = middle();
    fingers.set(event.pointerId, at);
    if (grip !== null) {
      // Turned past ±180° the difference wraps; the leaf never swings that far.
      const turned = ((stage.angleAt(at) - grip.startDeg + 540) % 360) - 180;
      stage.pull(grip.startPulled + turned);
      return;
    }
    const to = middle();
    stage.pan(to.x - from.x, to.y - from.y);
    if (fingers.size === 2 && spread > 0) {
      const now = apart();
      stage.zoom(now / spread, to);
      spread = now;
    }
  };
  const up = (event: PointerEvent) => {
    fingers.delete(event.pointerId);
    grip = null;
    spread = apart();
  };
  /** Scrolling scrolls the page; with a modifier, as two fingers on a touch pad send it, it enlarges. */
  const wheel = (event: WheelEvent) => {
    if (!event.ctrlKey && !event.metaKey) return;
    event.preventDefault();
    stage.zoom(Math.exp(-event.deltaY * (event.deltaMode === 1 ? 0.05 : 0.0015)), spot(event));
  };
  /** A finger on the leaf and two fingers anywhere are ours; one finger elsewhere scrolls the page. */
  const touch = (event: TouchEvent) => {
    const box = canvas.getBoundingClientRect();
    const [one] = event.touches;
    const onLeaf = one && stage.isOnLeaf({ x: one.clientX - box.left, y: one.clientY - box.top });
    if (event.touches.length > 1 || onLeaf) event.preventDefault();
  };
  const key = (event: KeyboardEvent) => {
    if (event.ctrlKey || event.metaKey || event.altKey) return;
    const moves: Record<string, () => void> = {
      ArrowLeft: () => stage.pan(KEY_PAN, 0),
      ArrowRight: () => stage.pan(-KEY_PAN, 0),
      ArrowUp: () => stage.pan(0, KEY_PAN),
      ArrowDown: () => stage.pan(0, -KEY_PAN),
      "+": () => stage.zoom(1.25),
      "=": () => stage.zoom(1.25),
      "-": () => stage.zoom(0.8),
      "0": () => stage.fit(),
    };
    const act = moves[event.key];
    if (act === undefined) return;
    event.preventDefault();
    act();
  };

  canvas.addEventListener("pointerdown", down);
  canvas.addEventListener("pointermove", move);
  canvas.addEventListener("pointerup", up);
  canvas.addEventListener("pointercancel", up);
  canvas.addEventListener("wheel", wheel, { passive: false });
  canvas.addEventListener("touchstart", touch, { passive: false });
  canvas.addEventListener("keydown", key);
  return () => {
    canvas.removeEventListener("pointerdown", down);
    canvas.removeEventListener("pointermove", move);
    canvas.removeEventListener("pointerup", up);
    canvas.removeEventListener("pointercancel", up);
    canvas.removeEventListener("wheel", wheel);
    canvas.removeEventListener("touchstart", touch);
    canvas.removeEventListener("keydown", key);
  };
}
