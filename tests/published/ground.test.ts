import { describe, expect, it } from "vitest";
import { type CropId, type Garden, INCH, LIMITS } from "../../src/index.ts";
import { coarseMesh } from "../../src/rules/coarse-mesh.ts";
import { computeFacts } from "../../src/rules/compute-facts.ts";
import { deckLoad } from "../../src/rules/deck-load.ts";
import type { Facts } from "../../src/rules/facts.ts";
import type { Rule } from "../../src/rules/rule.ts";
import { shallowSoil } from "../../src/rules/shallow-soil.ts";
import { tallWall } from "../../src/rules/tall-wall.ts";
import { bed, gardenOf, gardenWith, ground } from "../helpers/garden-of.ts";
import { expected, fact, factOf } from "./cases.ts";

/** Facts without a case of their own, held to by the rules about soil, mesh and walls; each named beside its check. */

const clears = <K extends keyof Facts>(rule: Rule<K>, garden: Garden) =>
  rule.check(computeFacts(garden, rule.needs)).length === 0;
const fabric = (depth: number) => ({ made: "fabric", height: depth }) as const;

describe("depth of soil over good ground", () => {
  it("is 6 in at least, DEPTH-OSU", () => {
    const least = fact("DEPTH-OSU", "min_in") * INCH;
    const deep = (depth: number) => gardenOf(bed("salads", { wall: fabric(depth) }));
    expect([clears(shallowSoil, deep(least)), clears(shallowSoil, deep(least - 0.6))]).toEqual([true, false]);
  });
});

describe("depth of soil over paving", () => {
  const paved = (inches: number, crops: readonly CropId[] = [], hardDepth?: number) =>
    gardenWith(
      hardDepth === undefined ? {} : { limits: { hardDepth: hardDepth * INCH } },
      ground("terrace", { w: 3000, h: 4000, cover: "paving" }),
      bed("salads", { wall: fabric(inches * INCH), crops }),
    );

  it("is 12 in at least, a house rule, DEPTH-PRAC", () => {
    const least = factOf("DEPTH-PRAC").value as number;
    expect(LIMITS.hardDepth.default).toBeCloseTo(least * INCH, 9);
    expect([clears(shallowSoil, paved(least)), clears(shallowSoil, paved(least - 0.03))]).toEqual([
      true,
      false,
    ]);
  });

  it("asks tomato, pepper and squash for what one extension's list gives, and no more, UMD-HARD", () => {
    const most = fact("UMD-HARD", "pepper, tomato, squash_in", "max");
    const least = fact("UMD-HARD", "pepper, tomato, squash_in", "min");
    for (const crop of ["tomato", "pepper", "squash-summer"] as const) {
      expect(clears(shallowSoil, paved(most, [crop])), crop).toBe(true);
      expect(clears(shallowSoil, paved(least - 0.03, [crop])), crop).toBe(false);
    }
  });

  // The same list lets leafy greens, beans and cucumber do with 8 in, which is shallower than the root classes of the
  // crop table (12 in for greens, 18 in for beans and cucumber): the stricter is asked for, and says so here.
  it("asks leafy greens for more than that list does, UMD-HARD", () => {
    const greens = fact("UMD-HARD", "leafy greens, beans, cucumber_in");
    expect(clears(shallowSoil, paved(greens, ["lettuce-leaf"], greens))).toBe(false);
    expect(clears(shallowSoil, paved(12, ["lettuce-leaf"], greens))).toBe(true);
  });
});

describe("mesh", () => {
  it.each(["gopher", "mole", "vole", "rat"] as const)(
    "keeps a %s out at the usual size and lets it in above, MESH-PRAC",
    (animal) => {
      const usual = fact("MESH-PRAC", `${animal}_in`) * INCH;
      const meshed = (opening: number) =>
        gardenWith({ ground: { burrowing: animal } }, bed("salads", { bottom: { mesh: { opening } } }));
      expect([clears(coarseMesh, meshed(usual)), clears(coarseMesh, meshed(usual + 0.6))]).toEqual([
        true,
        false,
      ]);
    },
  );
});

describe("walls and decks", () => {
  it("send a wall over 24 in to a professional, and none of exactly 24 in, IRC-R404.4", () => {
    const most = fact("IRC-R404.4", "unbalanced_fill_over_in") * INCH;
    const high = (height: number) =>
      gardenOf(bed("salads", { wall: { made: "metal", height, thickness: 1 } }));
    expect([clears(tallWall, high(most)), clears(tallWall, high(most + 0.6))]).toEqual([true, false]);
  });

  it("say how little soil uses up what a deck carries, LD-02 and DECK-40", () => {
    const garden = gardenWith({ ground: { cover: "deck" } }, bed("salads"));
    const [snag] = deckLoad.check(computeFacts(garden, deckLoad.needs));
    expect((snag?.limit ?? 0) / INCH).toBeCloseTo(expected("LD-02", "depth_that_uses_all_of_it_in"), 3);
  });
});
