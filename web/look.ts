/**
 * What is looked at, as against what the job is: the step on the stage, the theme, which folds are open.
 * None of this is in the job file, and undo leaves it alone.
 */

import type { Way } from "./worker/messages.ts";

export type Theme = "auto" | "light" | "dark";

export interface Looked {
  /** Step on the stage, from 0. */
  readonly step: number;
  readonly theme: Theme;
  readonly stageOpen: boolean;
  /** Counts how often the answer's own moment was asked for, so that the drawing goes back to it. */
  readonly asked: number;
  /** Which field is being filled in, by its id: its dimension lights up on the drawings. */
  readonly lit: string | null;
  /** The way out that is looked at, before and after. */
  readonly seenWay: Way | null;
}

const THEME_KEY = "noseroom.theme";

function keptTheme(drawer: Storage | null): string | null {
  try {
    return drawer?.getItem(THEME_KEY) ?? null;
  } catch {
    // A store that can't be read has no theme to tell.
    return null;
  }
}

export class Look {
  private state: Looked;
  private readonly listeners = new Set<() => void>();
  private readonly drawer: Storage | null;

  constructor(drawer: Storage | null) {
    this.drawer = drawer;
    const kept = keptTheme(drawer);
    this.state = {
      step: 0,
      theme: kept === "light" || kept === "dark" ? kept : "auto",
      stageOpen: false,
      asked: 0,
      lit: null,
      seenWay: null,
    };
    this.showTheme();
  }

  get now(): Looked {
    return this.state;
  }

  subscribe(listener: () => void): () => void {
    this.listeners.add(listener);
    return () => this.listeners.delete(listener);
  }

  set(change: Partial<Looked>): void {
    const next = { ...this.state, ...change };
    if (
      next.step === this.state.step &&
      next.theme === this.state.theme &&
      next.asked === this.state.asked &&
      next.lit === this.state.lit &&
      next.seenWay === this.state.seenWay &&
      next.stageOpen === this.state.stageOpen
    )
      return;
    this.state = next;
    if (change.theme) {
      this.showTheme();
      try {
        this.drawer?.setItem(THEME_KEY, change.theme);
      } catch {
        // A full store only means that the theme is forgotten.
      }
    }
    for (const listener of this.listeners) listener();
  }

  /** Day colours while the page is printed, then the chosen ones again. */
  showForPaper(printing: boolean): void {
    if (printing) document.documentElement.dataset.theme = "light";
    else this.showTheme();
  }

  private showTheme(): void {
    document.documentElement.dataset.theme = this.state.theme;
  }
}
