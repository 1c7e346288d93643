/**
 * What can go wrong with the browser's store, without a browser: full, shut to every hand, damaged, and two tabs at one
 * shelf. Each ends in a sentence and no loss.
 */
import { describe, expect, it } from "vitest";
import type { Drawer } from "../../web/store/drawer.ts";
import { firstJob } from "../../web/store/firstJob.ts";
import { type JobFile, setAt } from "../../web/store/jobFile.ts";
import { readShelf } from "../../web/store/keep.ts";
import { Keeper } from "../../web/store/keeper.ts";
import { openJob, type Shelf, withFile, withoutJob } from "../../web/store/shelf.ts";
import { Store } from "../../web/store/store.ts";

/** A drawer like the browser's, in memory; `room` says how many signs an entry may have. */
function drawerOf(room = () => Number.POSITIVE_INFINITY): Drawer & { readonly kept: Map<string, string> } {
  const kept = new Map<string, string>();
  return {
    kept,
    get length() {
      return kept.size;
    },
    key: (index) => [...kept.keys()][index] ?? null,
    getItem: (key) => kept.get(key) ?? null,
    setItem: (key, value) => {
      if (value.length > room()) throw new Error("full");
      kept.set(key, value);
    },
    removeItem: (key) => void kept.delete(key),
  };
}

const shelfOf = (...files: JobFile[]): Shelf => ({
  jobs: files.map((file, i) => ({ id: `j${i}`, file })),
  openId: "j0",
});

describe("the shelf in the browser's store", () => {
  it("comes back as it was put", () => {
    const drawer = drawerOf();
    const shelf = { ...shelfOf(firstJob("in"), firstJob("mm")), openId: "j1" };
    expect(new Keeper(drawer).keep(shelf)).toEqual({ refused: null, clashes: [], brakeClashes: [] });
    expect(readShelf(drawer)).toEqual({ shelf, damage: [] });
  });

  it("sets a damaged job aside with its text and keeps the rest", () => {
    const drawer = drawerOf();
    new Keeper(drawer).keep(shelfOf(firstJob("in"), firstJob("mm")));
    drawer.setItem("noseroom.job.j0", '{"version":1,"file":{"noser');
    const found = readShelf(drawer);
    expect(found.shelf?.jobs.map((job) => job.id)).toEqual(["j1"]);
    expect(found.damage[0]?.text).toBe('{"version":1,"file":{"noser');
    // It is still there on the next visit, until the person puts it away.
    expect(readShelf(drawer).damage.length).toBe(1);
  });

  it("says so when the browser refuses, and keeps it all once there is room again", () => {
    let room = 50;
    const drawer = drawerOf(() => room);
    const keeper = new Keeper(drawer);
    const [before, after] = [shelfOf(firstJob("in")), shelfOf(firstJob("in"), firstJob("mm"))];
    expect(keeper.keep(before).refused).toMatch(/full or closed/);
    room = Number.POSITIVE_INFINITY;
    expect(keeper.keep(after).refused).toBeNull();
    expect(readShelf(drawer).shelf?.jobs).toEqual(after.jobs);
    expect(new Keeper(null).keep(before).refused).toMatch(/keeps nothing/);
  });

  it("can be shut to every hand, and is then as good as none", () => {
    const shut = (): never => {
      throw new Error("shut");
    };
    const drawer = { length: 1, key: shut, getItem: shut, setItem: shut, removeItem: shut };
    const keeper = new Keeper(drawer);
    expect(keeper.read()).toEqual({ shelf: null, damage: [] });
    expect(keeper.keep(shelfOf(firstJob("in"))).refused).toMatch(/keeps nothing/);
  });

  it("tells of a damaged job where there is no room to set it aside, and leaves it where it is", () => {
    const drawer = drawerOf(() => 0);
    drawer.kept.set("noseroom.job.j0", "{spoilt");
    const { damage } = new Keeper(drawer).read();
    expect(damage.map(({ text }) => text)).toEqual(["{spoilt"]);
    expect(drawer.kept.get("noseroom.job.j0")).toBe("{spoilt");
  });

  it("writes only what changed, and takes away what is gone", () => {
    const drawer = drawerOf();
    const before = shelfOf(firstJob("in"), firstJob("mm"));
    const keeper = new Keeper(drawer);
    keeper.keep(before);
    drawer.kept.set("noseroom.job.other", drawer.kept.get("noseroom.job.j0")!);
    keeper.keep(withoutJob(before, "j1"));
    expect([...drawer.kept.keys()].filter((key) => key.includes("job")).sort()).toEqual([
      "noseroom.job.j0",
      "noseroom.job.other",
    ]);
  });

  it("is never written over where another tab has been since: neither changed nor taken away", () => {
    const drawer = drawerOf();
    const before = shelfOf(firstJob("in"), firstJob("mm"));
    const [mine, theirs] = [new Keeper(drawer), new Keeper(drawer)];
    mine.keep(before);
    const other = theirs.read().shelf!;
    const changedBy = (name: string, shelf: Shelf) =>
      withFile(shelf, setAt(openJob(shelf).file, ["part", "name"], name));
    theirs.keep(changedBy("theirs", other));
    expect(mine.keep(changedBy("mine", before)).clashes).toEqual(["j0"]);
    mine.keep(withoutJob(before, "j0"));
    expect(mine.stored("j0")?.file.part.name).toBe("theirs");
    // A change of its place on the shelf alone is no change of the job.
    theirs.keep(withoutJob(changedBy("theirs", other), "j0"));
    expect(mine.keep({ ...before, openId: "j1" }).clashes).toEqual([]);
  });
});

describe("two tabs at one shelf", () => {
  const twoTabs = () => {
    const drawer = drawerOf();
    const first = new Store(drawer, () => firstJob("in"));
    first.set(["part", "name"], "Trough", "name it");
    const second = new Store(drawer, () => firstJob("in"));
    const id = first.snapshot().shelf.openId;
    const names = (store: Store) =>
      store
        .snapshot()
        .shelf.jobs.map((job) => job.file.part.name)
        .sort();
    return { drawer, first, second, id, key: `noseroom.job.${id}`, names };
  };
  const flat = (store: Store, text: string) => store.set(["part", "flats", 0], text, "change flat 1", true);

  it("show the other's version when asked, and undo brings one's own back", () => {
    const { first, second, key } = twoTabs();
    flat(second, "7/8");
    first.otherTab(key);
    const notice = first.snapshot().notices.at(-1)!;
    expect(notice.sentence).toMatch(/in another tab too.*Nothing is lost/);
    notice.choices!.find(({ words }) => words.startsWith("Show"))!.act();
    expect(first.snapshot().file.part.flats[0]).toBe("7/8");
    first.undo();
    expect(first.snapshot().file.part.flats[0]).toBe("1/2");
    // That undo is a change of its own: the other tab is told in its turn.
    second.otherTab(key);
    expect(second.snapshot().notices.length).toBe(1);
  });

  it("keep both versions where the other's is typed over unseen, whatever is undone after", () => {
    const { drawer, first, second, id, names } = twoTabs();
    flat(second, "7/8");
    flat(first, "5/8");
    expect(names(first)).toEqual(["Trough", "Trough 2"]);
    expect(first.snapshot().file.part).toMatchObject({ name: "Trough 2", flats: ["5/8", "3/8", "1/2"] });
    expect(first.snapshot().notices.at(-1)?.sentence).toMatch(/changed in two tabs. Both are kept/);
    for (let i = 0; i < 5; i++) first.undo();
    const kept = readShelf(drawer).shelf!;
    expect(kept.jobs.find((job) => job.id === id)?.file.part.flats[0]).toBe("7/8");
    expect(kept.jobs.length).toBe(2);
  });

  it("take over each other's jobs that lie open nowhere else, and no undo takes them back", () => {
    const { drawer, first, second, names } = twoTabs();
    second.add(firstJob("mm"), "start a new job");
    const added = second.snapshot().shelf.openId;
    first.otherTab(`noseroom.job.${added}`);
    flat(first, "9/16");
    expect(names(first)).toEqual(["Cable trough", "Trough"]);
    flat(second, "20");
    first.otherTab(`noseroom.job.${added}`);
    first.undo();
    first.undo();
    expect(names(first)).toContain("Cable trough");
    const kept = readShelf(drawer).shelf!;
    expect(kept.jobs.find((job) => job.id === added)?.file.part.flats[0]).toBe("20");
    second.remove(added);
    first.otherTab(`noseroom.job.${added}`);
    expect(names(first)).not.toContain("Cable trough 2");
  });

  it("tell of a job taken away elsewhere, and keep it again with the next change", () => {
    const { drawer, first, second, id, key } = twoTabs();
    second.add(firstJob("mm"), "start a new job");
    second.remove(id);
    expect(drawer.kept.has(key)).toBe(false);
    first.otherTab(key);
    expect(first.snapshot().notices.at(-1)?.sentence).toMatch(/taken “Trough” away. It stays open here/);
    flat(first, "3/4");
    expect(drawer.kept.has(key)).toBe(true);
  });

  it("keep the metals of both", () => {
    const { first, second } = twoTabs();
    const metal = (name: string) => ({ name, yield: 200, modulus: 70_000 });
    second.keepMetals([metal("roof sheet")], "keep a metal");
    first.keepMetals([metal("gutter sheet")], "keep a metal");
    second.otherTab("noseroom.metals");
    expect(second.snapshot().shelf.metals?.map(({ name }) => name)).toEqual(["roof sheet", "gutter sheet"]);
  });
});
