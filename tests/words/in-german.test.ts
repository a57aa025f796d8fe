import { beforeAll, describe, expect, it, vi } from "vitest";

/** The engine as a German gardener reads it: reckoned anew in a realm that speaks German. */

type Engine = typeof import("../../src/index.ts");
let engine: Engine;
const missing: string[] = [];

beforeAll(async () => {
  vi.resetModules();
  const [{ makeSpeaker }, { speakWith }, { default: german }] = await Promise.all([
    import("../../src/words/make-speaker.ts"),
    import("../../src/words/speaker.ts"),
    import("../../src/words/catalogue-de.ts"),
  ]);
  speakWith(await makeSpeaker("de", german, (english) => missing.push(english)));
  engine = await import("../../src/index.ts");
});

describe("figures and lengths", () => {
  // Number formats as in DIN 1333 and the Unicode CLDR for German: decimal comma, point between thousands.
  it("have a decimal comma, and points between thousands", () => {
    expect(engine.figure(3.25)).toBe("3,25");
    expect(engine.figure(12345)).toBe("12.345");
    expect(engine.formatMoney(1234.5, "EUR")).toBe("1.234,50\u00a0€");
    expect(engine.formatLength(1380, "metric")).toBe("1,38 m");
    expect(engine.formatShort(475, "metric")).toBe("47,5 cm");
    expect(engine.formatLength(1384.3, "us")).toBe("4′ 6½″");
    expect(engine.formatShort(1219.2, "us")).toBe("48 Zoll");
  });

  it("are read back as they are written, to the millimetre", () => {
    for (let mm = 1; mm <= 3000; mm++) {
      expect(engine.parseLength(engine.formatLength(mm, "metric"), "metric")).toBe(mm);
      expect(engine.parseLength(engine.formatShort(mm, "metric"), "metric")).toBe(mm);
    }
    for (let sixteenths = 1; sixteenths <= 960; sixteenths++) {
      const mm = (sixteenths * 25.4) / 16;
      for (const text of [engine.formatShort(mm, "us"), engine.formatSpoken(mm, "us")])
        expect(engine.parseLength(text, "us")).toBeCloseTo(mm, 9);
    }
  });

  it("leave a point before three digits open, and take it elsewhere", () => {
    expect(engine.parseLength("1.5 m", "metric")).toBe(1500);
    expect(() => engine.parseLength("1.234 m", "metric")).toThrow(/ohne Punkt/);
    expect(engine.parseLength("1.234,5 mm", "metric")).toBe(1234.5);
  });
});

describe("a garden", () => {
  const MULCHES = ["straw", "leaves", "wood-chips", "bark", "grass-clippings", "compost"] as const;
  /** Words that German does not have, in texts that are not a citation. */
  const ENGLISH =
    /\b(the|with|of|and|from|that|which|are|is|for|by|to|no|it|bed|beds|soil|path|wide|high)\b/i;

  it("has its snags, with their why and their ways out, in German", () => {
    const rules = new Set<string>();
    for (const { garden } of engine.EXAMPLES) {
      const named = garden.items.map((item) => ({ ...item, name: "" }));
      const crowded = { ...garden, items: named.map((item) => ({ ...item, at: [0, 0] as const })) };
      for (const each of [{ ...garden, items: named }, crowded]) {
        for (const snag of engine.checkGarden(each)) {
          rules.add(snag.rule);
          const texts = [snag.title, snag.detail, snag.why, ...snag.waysOut.map(({ label }) => label)];
          for (const text of texts) expect(text).not.toMatch(ENGLISH);
        }
      }
    }
    expect(rules.size).toBeGreaterThan(12);
    // All ways out of all examples take their time on a busy machine.
  }, 120_000);

  it("has its takeoff in German", () => {
    for (const { garden } of engine.EXAMPLES) {
      const nameless = { ...garden, items: garden.items.map((item) => ({ ...item, name: "" })) };
      for (const { what, how } of engine.takeoff(nameless).lines) {
        expect(what).not.toMatch(ENGLISH);
        expect(how).not.toMatch(ENGLISH);
      }
    }
  });

  it("has its year, whatever covers its beds, in German", () => {
    const covers = Object.keys(engine.COVER_CROPS) as (keyof typeof engine.COVER_CROPS)[];
    const winters = ["cover-crop", "mulch", "sheet", "nothing"] as const;
    const kinds = new Set<string>();
    for (const { garden } of engine.EXAMPLES) {
      for (const [i, cover] of covers.entries()) {
        const items = garden.items.map((item) =>
          item.kind === "bed"
            ? { ...item, name: "", winter: winters[i % 4]!, mulch: { material: MULCHES[i % 6]!, depth: 50 } }
            : { ...item, name: "" },
        );
        const site = { ...garden.site, winter: i % 2 === 0 ? ("freezing" as const) : ("mild" as const) };
        for (const task of engine.yearRound({
          ...garden,
          site,
          items,
          upkeep: { ...garden.upkeep, cover },
        })) {
          kinds.add(task.kind);
          const { title, detail, quantities, tools, why, cautions } = task;
          for (const text of [title, detail, ...quantities, ...tools, why, ...cautions])
            expect(text).not.toMatch(ENGLISH);
        }
      }
    }
    expect(kinds.size).toBe(10);
  });

  it("names what is wrong with a climate in German", () => {
    const garden = engine.EXAMPLES.find((example) => example.garden.climate)!.garden;
    const months = garden.climate!.months.map((month) => ({ ...month, maxC: month.minC - 5 }));
    const known = engine.climateOf({ ...garden, climate: { ...garden.climate!, months } });
    expect(known).toEqual({ problem: expect.stringMatching(/Tiefsttemperatur darf nicht unter 0 liegen/) });
  });

  it("asked for no word that German lacks", () => {
    expect([...new Set(missing)]).toEqual([]);
  });
});
