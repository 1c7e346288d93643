/**
 * One part of a shop file on one of its brakes, without a job file in between; and what `fit` says to do next.
 */
import { readFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import { EXAMPLES, noseroom } from "./noseroom.ts";

const shop = join(EXAMPLES, "shop/observatory.json");
const file = JSON.parse(readFileSync(shop, "utf8"));
const [part, brake] = ["Z clip", "vise brake"];
const job = JSON.stringify({
  noseroom: 1,
  units: file.units,
  part: file.parts.find(({ name }: { name: string }) => name === part),
  brake: file.brakes.find(({ name }: { name: string }) => name === brake),
});

describe("noseroom with --part and --brake of a shop file", () => {
  it.each(["check", "ways", "blank"])("%s answers as for that job", async (command) => {
    const chosen = await noseroom([command, shop, "--part", part, "--brake", brake]);
    const alone = await noseroom([command, "-"], { input: job });
    expect(chosen).toEqual(alone);
    expect(chosen.status).toBe(0);
  });

  it("takes numbers, in letters of any size, and says which there are where the choice is open", async () => {
    const byNumber = await noseroom(["check", shop, "--part", "7", "--brake", "VISE BRAKE"]);
    expect(byNumber.out).toContain("Z clip on vise brake");
    const open = await noseroom(["check", shop, "--part", part]);
    expect(open).toMatchObject({ status: 2, out: "" });
    expect(open.err).toMatch(/^--brake is missing; it may be a name or number of: 1 finger brake, 2 /u);
    const wrong = await noseroom(["check", "-", "--part", part], { input: job });
    expect(wrong.err).toBe("--part and --brake choose from a shop file; standard input is a job file.\n");
  });

  it("fit says in which order each part is folded, and what to print next", async () => {
    const { out } = await noseroom(["fit", shop]);
    const { order } = JSON.parse(
      (await noseroom(["check", shop, "--part", "wide cable trough", "--brake", "1", "--json"])).out,
    );
    expect(out).toContain(`wide cable trough on finger brake: bend ${order[0].bend} with flat`);
    expect(out).toContain(`noseroom sheet ${shop} --part NAME --brake NAME --pdf sheet.pdf`);
  });
});
