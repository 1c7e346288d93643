/**
 * Lines for the person that stay until put away: what could not be kept or read, and what another tab has done.
 */
import type { Damage } from "./keep.ts";

export interface Notice {
  readonly id: number;
  readonly sentence: string;
  /** Text offered for download beside the sentence; a function gives it as it is when it is asked for. */
  readonly download?: { readonly name: string; readonly text: string | (() => string) };
  readonly damage?: Damage;
  /** What may be done about it; either puts the line away. */
  readonly choices?: readonly Choice[];
  /** What the line is about: a newer one about the same takes its place. */
  readonly about?: string;
  /** Text to copy by hand, for a file that the browser did not save. */
  readonly copy?: string;
}

export interface Choice {
  readonly words: string;
  readonly act: () => void;
}

const MOST = 6;

export class NoticeBoard {
  private all: readonly Notice[] = [];
  private count = 0;

  get lines(): readonly Notice[] {
    return this.all;
  }

  say(sentence: string, more: Omit<Notice, "id" | "sentence">): void {
    const others = this.all.filter(({ about }) => about === undefined || about !== more.about);
    this.all = [...others, { id: ++this.count, sentence, ...more }].slice(-MOST);
  }

  /** Takes away the line about something that is over; whether there was one. */
  drop(about: string): boolean {
    const before = this.all.length;
    this.all = this.all.filter((notice) => notice.about !== about);
    return this.all.length < before;
  }

  /** Takes a line away and gives it back. */
  putAway(id: number): Notice | undefined {
    const gone = this.all.find((notice) => notice.id === id);
    this.all = this.all.filter((notice) => notice !== gone);
    return gone;
  }
}
