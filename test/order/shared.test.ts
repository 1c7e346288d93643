/**
 * Judgements shared by sets that begin alike, and costs in one number. Source: the same told plainly.
 */
import { expect, it } from "vitest";
import { Shared, Told } from "../../src/order/shared.ts";
import { Weights } from "../../src/order/weights.ts";

/** Tells how many of the bends looked at are made, until two of them are. */
class Tally extends Told<Tally> {
  readonly decides: boolean;

  constructor(
    readonly made: number,
    private readonly asked: { next: number },
  ) {
    super();
    this.decides = made === 2;
  }

  protected next(made: boolean): Tally {
    this.asked.next++;
    return new Tally(this.made + Number(made), this.asked);
  }
}

it.each([[[4, 2, 0, 1, 3]], [[3, 4, 5, 6]], [Array.from({ length: 14 }, (_, i) => 13 - i)]])(
  "tells of every set what its first two made bends of %j tell, each beginning worked out once",
  (bends) => {
    const asked = { next: 0 };
    const shared = new Shared(bends, new Tally(0, asked));
    const beginnings = new Set<string>();
    for (let set = 0; set < 2 ** (Math.max(...bends) + 1); set++) {
      let [made, beginning] = [0, ""];
      for (const bend of bends) {
        if (made === 2) break;
        made += (set >> bend) & 1;
        beginning += (set >> bend) & 1;
        beginnings.add(beginning);
      }
      expect(shared.of(set).made).toBe(made);
    }
    expect(asked.next).toBe(beginnings.size);
    expect(shared.upTo(2 ** 14 - 1, () => false).made).toBe(bends.length);
  },
);

it("Weights puts costs of several kinds into one number, the first kind first", () => {
  const weights = new Weights([4, 1000, 30]);
  const costs = [
    [0, 0, 30],
    [0, 1, 0],
    [0, 1000, 30],
    [1, 0, 0],
    [4, 7, 9],
  ];
  const numbers = costs.map((kinds) => weights.cost(...kinds));
  expect(numbers).toEqual([...numbers].sort((a, b) => a - b));
  expect(numbers.map((number) => weights.kinds(number))).toEqual(costs);
  expect(() => new Weights([2 ** 30, 2 ** 30])).toThrow(RangeError);
});
