/**
 * Two tabs at one shelf: what another tab writes is taken over, and no undo here undoes it. Where both have changed the
 * job that lies open, neither writes over the other: the person is told and chooses, and both versions are kept.
 */
import { sameJob } from "./keep.ts";
import type { Keeper, News } from "./keeper.ts";
import type { Notice } from "./noticeBoard.ts";
import {
  freeName,
  newId,
  openJob,
  type Shelf,
  type ShelfBrake,
  withBoth,
  withOthers,
  withoutOthers,
} from "./shelf.ts";

/** The shelf with another tab's version of a brake in the place of the one that was there; without it where it is gone. */
function withOthersBrake(shelf: Shelf, id: string, brake: ShelfBrake | null): Shelf {
  const others = (shelf.brakes ?? []).filter((one) => one.id !== id);
  const brakes = brake ? [...others, brake].sort((a, b) => (a.id < b.id ? -1 : 1)) : others;
  return { ...shelf, brakes };
}

/** What the store lets be done to it from here. */
interface Host {
  shelf(): Shelf;
  /** Changes every shelf of the history. */
  rewrite(change: (shelf: Shelf) => Shelf): void;
  /** A change that undo takes back. */
  put(shelf: Shelf, did: string): void;
  open(id: string): void;
  say(sentence: string, more: Omit<Notice, "id" | "sentence">): void;
  keep(): void;
}

type JobNews = Extract<News, { kind: "job" | "gone" }>;

export class OtherTabs {
  constructor(
    private readonly keeper: Keeper,
    private readonly host: Host,
  ) {}

  /** Another tab has changed this key of the browser's store. */
  news(key: string | null): void {
    const news = this.keeper.newsOf(key);
    if (news === null) return;
    if (news.kind === "metals") {
      this.host.rewrite((shelf) => ({ ...shelf, metals: news.metals }));
      this.keeper.acceptMetals(news.metals);
    } else if (news.kind === "brake") {
      this.host.rewrite((shelf) => withOthersBrake(shelf, news.id, news.brake));
      this.keeper.acceptBrake(news.id);
    } else if (news.id === this.host.shelf().openId) this.ofOpenJob(news);
    else this.ofOtherJob(news);
  }

  private ofOtherJob(news: JobNews): void {
    if (news.kind === "gone") {
      this.keeper.forget(news.id);
      this.host.rewrite((shelf) => withoutOthers(shelf, news.id));
      return;
    }
    this.host.rewrite((shelf) => withOthers(shelf, news.job));
    this.keeper.accept(news.job, this.placeOf(news.id));
  }

  private ofOpenJob(news: JobNews): void {
    const mine = openJob(this.host.shelf());
    const name = `“${mine.file.part.name}”`;
    if (news.kind === "gone") {
      this.keeper.forget(news.id);
      const sentence = `Another tab has taken ${name} away. It stays open here and is kept again when you change it.`;
      this.host.say(sentence, { about: news.id });
    } else if (sameJob(news.job, mine)) {
      this.keeper.accept(mine, this.placeOf(news.id));
    } else {
      const sentence = `${name} lies open in another tab too, and was changed there. Nothing is lost either way.`;
      const choices = [
        { words: "Show the other tab’s", act: () => this.takeTheirs(news.id) },
        {
          words: "Keep both",
          act: () => {
            this.keepBoth(news.id);
            this.host.keep();
          },
        },
      ];
      this.host.say(sentence, { about: news.id, choices });
    }
  }

  private placeOf(id: string): number {
    return this.host.shelf().jobs.findIndex((job) => job.id === id);
  }

  private takeTheirs(id: string): void {
    const theirs = this.keeper.stored(id);
    if (theirs === null) return;
    this.keeper.accept(theirs, this.placeOf(id));
    this.host.put(withOthers(this.host.shelf(), theirs), "show the other tab’s version");
  }

  /** This tab's version becomes a job of its own; the other tab's stays where it is. */
  keepBoth(id: string): void {
    const { jobs } = this.host.shelf();
    const mine = jobs.find((job) => job.id === id);
    if (mine === undefined) return;
    const theirs = this.keeper.stored(id);
    const was = mine.file.part.name;
    const own = {
      id: newId(),
      name: freeName(
        jobs.map((job) => job.file.part.name),
        was,
      ),
    };
    this.keeper.forget(id);
    this.host.rewrite((shelf) => withBoth(shelf, id, own, theirs));
    if (theirs) this.keeper.accept(theirs, this.placeOf(id));
    const sentence = `“${was}” was changed in two tabs. Both are kept: yours is “${own.name}” now.`;
    const choices = theirs ? [{ words: "Open the other tab’s", act: () => this.host.open(id) }] : [];
    this.host.say(sentence, { about: id, choices });
  }

  /** Both tabs have kept a brake anew: this tab's becomes a brake of its own beside the other's. */
  keepBothBrakes(id: string): void {
    const theirs = this.keeper.acceptBrake(id);
    const own = newId();
    this.host.rewrite((shelf) => {
      const mine = shelf.brakes?.find((one) => one.id === id);
      if (!mine || !theirs) return shelf;
      const name = freeName(
        (shelf.brakes ?? []).map(({ brake }) => brake.name),
        mine.brake.name,
      );
      const moved: ShelfBrake = { ...mine, id: own, brake: { ...mine.brake, name } };
      const jobs = shelf.jobs.map((job) => (job.brakeId === id ? { ...job, brakeId: own } : job));
      const apart = withOthersBrake(shelf, id, theirs);
      return { ...apart, brakes: [...(apart.brakes ?? []), moved], jobs };
    });
  }
}
