import { describe, expect, it } from "vitest";
import { applyOps, emptyGarden, type Garden, yearDay } from "../../src/index.ts";
import { comesUpIn } from "../../src/upkeep/types.ts";
import { yearRound } from "../../src/upkeep/year-round.ts";
import { type bed, gardenWith, tap } from "../helpers/garden-of.ts";
import { fourByEight, mixedGarden, RIVERSIDE, taskOf, tasksOf } from "./tasks.ts";

const day = yearDay;

describe("the year round", () => {
  it("asks nothing of a garden without beds", () => {
    expect(yearRound(emptyGarden("us"))).toEqual([]);
  });

  it("gives every task an id of its own, a reason, a source, days within the year, and an order", () => {
    const tasks = yearRound(mixedGarden(RIVERSIDE));
    expect(new Set(tasks.map(({ id }) => id)).size).toBe(tasks.length);
    expect(new Set(tasks.map(({ kind }) => kind)).size).toBe(10);
    for (const task of tasks) {
      expect(task.why.length, task.id).toBeGreaterThan(20);
      expect(task.source.text.length, task.id).toBeGreaterThan(10);
      expect(task.title, task.id).toMatch(/^[A-Z0-9]/);
      expect(task.detail, task.id).toMatch(/^[^a-z].*[.]$/s);
      expect(Number.isInteger(task.from) && task.from >= 1 && task.from <= 365, task.id).toBe(true);
      expect(Number.isInteger(task.days) && task.days >= 1 && task.days <= 365, task.id).toBe(true);
    }
    expect(tasks.map(({ from }) => from)).toEqual(tasks.map(({ from }) => from).toSorted((a, b) => a - b));
  });

  it("keeps its ids when a frost changes, a bed is renamed or one is moved", () => {
    const garden = mixedGarden(RIVERSIDE);
    const ids = (of: Garden) =>
      yearRound(of)
        .map(({ id }) => id)
        .sort();
    const changed = applyOps(garden, [
      { op: "set-site", changes: { lastFrost: "05-06" } },
      { op: "set", id: garden.items[0]!.id, changes: { name: "Leaves" } },
      { op: "move", id: garden.items[1]!.id, by: [400, 7000] },
    ]);
    expect(ids(changed)).toEqual(ids(garden));
  });

  it("says of days whether frosts were typed or are only usual for the winter", () => {
    const typed = taskOf(tasksOf(RIVERSIDE, fourByEight("a")), "top-up-spring");
    const usual = tasksOf({ ...RIVERSIDE, lastFrost: null }, fourByEight("a"));
    expect(typed.dayBy).toBe("frosts");
    expect(taskOf(usual, "top-up-spring").dayBy).toBe("usual");
  });
});

describe("topping up", () => {
  // 29.0625 ft² of soil in each of two: 58.125 ft², at 2½ in 12.109 ft³, at 1 in 4.844 ft³.
  const beds = [fourByEight("a"), fourByEight("b", { x: 4000 })];
  const withUpkeep = (upkeep: Partial<Garden["upkeep"]>) => {
    const garden = gardenWith({ site: RIVERSIDE }, ...beds);
    return yearRound({ ...garden, upkeep: { ...garden.upkeep, ...upkeep } });
  };

  it("reckons the middle of the habit, and tells both ways with what each takes", () => {
    const task = taskOf(withUpkeep({ topUp: "habit" }), "top-up-spring");
    expect(task.quantities[0]).toBe("12.1 ft³, 0.45 yd³ of compost: 2½ in on 58.1 ft²");
    expect(task.detail).toContain("habit is 2 in to 3 in, 9.69 ft³ to 14.5 ft³ a year");
    expect(task.detail).toContain("advice is 1 in a year or less, 4.84 ft³");
    expect(task.quantities[2]).toBe("6.05 ft³ a bed");
    expect(task.since).toBe(1);
  });

  it("reckons the inch of the advice, halved where it is done twice", () => {
    expect(taskOf(withUpkeep({ topUp: "advice" }), "top-up-spring").quantities[0]).toContain("1 in on");
    const twice = withUpkeep({ topUp: "advice", topUpsAYear: 2 });
    expect(taskOf(twice, "top-up-spring").quantities[0]).toContain("½ in on");
    expect(taskOf(twice, "top-up-autumn").quantities[0]).toContain("½ in on");
  });

  it("comes in bags or loads that hold it", () => {
    const [, bought = ""] = taskOf(withUpkeep({}), "top-up-spring").quantities;
    const bags = [...bought.matchAll(/(\d+) × Compost, (1½|1) ft³ bag/g)].map(
      ([, n, size]) => Number(n) * (size === "1½" ? 1.5 : 1),
    );
    const held = bags.reduce((sum, feet) => sum + feet, 0);
    expect(held).toBeGreaterThanOrEqual(12.1);
    expect(held).toBeLessThan(13.7);
  });
});

describe("mulch", () => {
  it("is laid by its material, and warned of where it lies deeper than is usual", () => {
    const tasks = tasksOf(
      RIVERSIDE,
      fourByEight("a", { mulch: { material: "grass-clippings", depth: 50.8 } }),
      fourByEight("b", { x: 4000, mulch: { material: "straw", depth: 50.8 } }),
    );
    const grass = taskOf(tasks, "mulch-grass-clippings");
    expect(grass.cautions[0]).toBe("2 in is deeper than grass clippings is usually laid, ¼ in to 1 in.");
    expect(taskOf(tasks, "mulch-straw").cautions[0]).toMatch(/stems/);
    // 29.0625 ft² at 2 in.
    expect(taskOf(tasks, "mulch-straw").quantities[0]).toBe("4.84 ft³ of straw on 29.1 ft²");
  });

  it("of chips is renewed when half of two to three years is over: in years 2, 5 and 7 of ten", () => {
    const chips = taskOf(
      tasksOf(RIVERSIDE, fourByEight("a", { mulch: { material: "wood-chips", depth: 76.2 } })),
      "mulch-wood-chips",
    );
    expect(chips.years).toEqual([0, 2, 5, 7]);
    expect([0, 1, 2, 3, 5].filter((year) => comesUpIn(chips, year))).toEqual([0, 2, 5]);
  });
});

describe("sowing and picking", () => {
  // Colorado State GardenNotes 720: very tender crops are set two weeks after the last frost, here 28 April.
  it("hangs on the frosts: tomatoes are started seven weeks before they are set, two weeks after the last frost", () => {
    const tasks = tasksOf(RIVERSIDE, fourByEight("a", { crops: ["tomato"] }));
    expect(taskOf(tasks, "sow-a-tomato").from).toBe(day("05-12"));
    expect(taskOf(tasks, "start-a-tomato").from).toBe(day("05-12") - 49);
    // 60 to 85 days to maturity: first ripe 60 days later, until the first frost of 14 October.
    const harvest = taskOf(tasks, "harvest-a-tomato");
    expect(harvest.from).toBe(day("05-12") + 60);
    expect(harvest.from + harvest.days).toBe(day("10-14"));
  });

  it("makes one task of a crop set in two beds on one day, and two of one sown twice", () => {
    const tasks = tasksOf(
      RIVERSIDE,
      fourByEight("a", { name: "Ada", crops: ["radish", "radish"] }),
      fourByEight("b", { name: "Bea", x: 4000, crops: ["radish"] }),
    );
    expect(taskOf(tasks, "sow-a-radish").bedIds).toEqual(["a", "b"]);
    expect(taskOf(tasks, "sow-a-radish-2").bedIds).toEqual(["a"]);
    expect(taskOf(tasks, "sow-a-radish").detail).toContain("both beds");
  });

  it("takes the day typed, and leaves out the picking of what is gone before it is ripe", () => {
    const grown = fourByEight("a", { crops: ["carrot"] });
    const [carrot] = grown.plantings;
    const planted = { ...grown, plantings: [{ ...carrot!, from: "06-03", until: "06-20" }] };
    const tasks = tasksOf(RIVERSIDE, planted);
    expect(taskOf(tasks, "sow-a-carrot")).toMatchObject({ from: day("06-03"), dayBy: "typed" });
    expect(tasks.some(({ id }) => id === "harvest-a-carrot")).toBe(false);
  });

  it("sets what stays once, and picks asparagus from its second year for seven weeks", () => {
    const tasks = tasksOf(RIVERSIDE, fourByEight("a", { crops: ["asparagus"] }));
    expect(taskOf(tasks, "sow-a-asparagus").years).toEqual([0]);
    // 730 to 1095 days.
    expect(taskOf(tasks, "harvest-a-asparagus")).toMatchObject({ since: 2, days: 49 });
  });

  it("picks garlic set in autumn in the year after", () => {
    const tasks = tasksOf(RIVERSIDE, fourByEight("a", { crops: ["garlic"] }));
    expect(taskOf(tasks, "sow-a-garlic").from).toBe(day("10-14"));
    const harvest = taskOf(tasks, "harvest-a-garlic");
    expect(harvest.since).toBe(1);
    expect(harvest.from).toBe(day("10-14") + 240 - 365);
  });
});

describe("cover crops", () => {
  const covered = (changes: Parameters<typeof bed>[1] = {}) =>
    fourByEight("a", { winter: "cover-crop", ...changes });

  it("are rye where winters freeze, with seed by the bed's area", () => {
    const task = taskOf(tasksOf(RIVERSIDE, covered()), "cover-sow-a");
    // 29.0625 ft² at 90 to 160 lb an acre (SARE): 0.0600 to 0.1067 lb.
    expect(task.quantities).toEqual(["0.96 oz to 1.7 oz of cereal rye seed on 29.1 ft²"]);
    expect(task.from).toBe(day("10-14") - 21);
  });

  it("wait until the bed is empty while there is time, and are sown among what stands otherwise", () => {
    const tomatoes = taskOf(tasksOf(RIVERSIDE, covered({ crops: ["tomato"] })), "cover-sow-a");
    expect(tomatoes.from).toBe(day("10-14"));
    const kale = taskOf(tasksOf(RIVERSIDE, covered({ crops: ["kale"] })), "cover-sow-a");
    expect(kale.cautions[0]).toBe("Kale still stands there: sow between the plants.");
  });

  it("that live through the winter are ended so that the ground rests before what comes next", () => {
    const lettuce = tasksOf(RIVERSIDE, covered({ crops: ["lettuce-leaf"] }));
    const end = taskOf(lettuce, "cover-end-a");
    // Ten days to do it in, then the three weeks that Cornell asks for.
    expect(end.from + end.days + 21).toBe(taskOf(lettuce, "sow-a-lettuce-leaf").from);
    expect(end.since).toBe(1);
  });

  it("that frost kills are raked aside", () => {
    const garden = gardenWith({ site: RIVERSIDE }, covered());
    const tasks = yearRound({ ...garden, upkeep: { ...garden.upkeep, cover: "oats" } });
    expect(taskOf(tasks, "cover-clear").title).toBe("Rake the dead oats aside");
    expect(tasks.some(({ id }) => id === "cover-end-a")).toBe(false);
  });

  it("are not sown where something stands all year: those beds get leaves", () => {
    const tasks = tasksOf(RIVERSIDE, covered({ crops: ["thyme"] }));
    expect(tasks.filter(({ kind }) => kind === "cover-crop")).toEqual([]);
    expect(taskOf(tasks, "winter-mulch").bedIds).toEqual(["a"]);
  });
});

describe("water", () => {
  it("by the rule of thumb is asked for in growing months alone where winters freeze", () => {
    const tasks = tasksOf(RIVERSIDE, fourByEight("a", { crops: ["strawberry"] }));
    const months = tasks.flatMap(({ id }) => (/^water-\d\d$/.test(id) ? [id] : []));
    expect(months).toEqual(["04", "05", "06", "07", "08", "09", "10"].map((month) => `water-${month}`));
  });

  it("is asked for in no month by beds in which nothing grows", () => {
    expect(tasksOf(RIVERSIDE, fourByEight("a")).filter(({ id }) => /^water-/.test(id))).toEqual([]);
  });
});

describe("drip lines", () => {
  const dripped = (site: Partial<Garden["site"]>, climate: Garden["climate"] = null) => {
    const plain = fourByEight("a", { crops: ["strawberry"] });
    const watered = { ...plain, watering: { ...plain.watering, by: "drip" as const } };
    return yearRound({ ...gardenWith({ site }, watered, tap("tap", { at: [4000, 0] })), climate });
  };
  const months = (tasks: ReturnType<typeof yearRound>) =>
    tasks.flatMap(({ id, quantities }) => (/^water-\d\d$/.test(id) ? [quantities.join()] : []));

  it("run for the minutes of their zone in growing months, and are blown out before hard frost", () => {
    const tasks = dripped(RIVERSIDE);
    expect(months(tasks)).toHaveLength(7);
    for (const quantities of months(tasks)) expect(quantities).toMatch(/^Drip on Bed: \d+ min a week$/);
    expect(taskOf(tasks, "water-07").title).toBe("Set the drip timer");
    const winter = taskOf(tasks, "drip-winter");
    expect(winter.title).toBe("Blow out the drip lines before frost");
    expect(winter.from + winter.days).toBe(day("10-14"));
    expect(taskOf(tasks, "drip-spring").from).toBe(day("04-28") - 14);
  });

  it("are only drained where winters are mild, and not at all where it never freezes", () => {
    expect(taskOf(dripped({ ...RIVERSIDE, winter: "mild" }), "drip-winter").title).toMatch(/^Drain/);
    const tropics = dripped({ latitude: 5, winter: "mild", lastFrost: null, firstFrost: null });
    expect(tropics.some(({ id }) => id === "drip-winter")).toBe(false);
    expect(months(tropics)).toHaveLength(12);
  });

  it("lie empty in a mild winter too: what the climate then asks for is given by hand", () => {
    const month = { maxC: 22, minC: 9, rain: 3, humidity: null, sunHours: null, windMs: null };
    const climate = {
      ...{ station: "made up", altitude: 20, setting: "interior" as const, gaugeHeight: 2000 },
      months: Array.from({ length: 12 }, () => month),
    };
    const tasks = dripped({ ...RIVERSIDE, winter: "mild" }, climate);
    expect(taskOf(tasks, "water-07").quantities.join()).toMatch(/min a week$/);
    expect(taskOf(tasks, "water-01").quantities.join()).toMatch(/gal a week in all$/);
  });
});

describe("renewals", () => {
  it("come when the middle of a life is over: mesh of ten years not within ten, Douglas-fir of five to seven in year 6", () => {
    const mesh = { mesh: { opening: 12.7 }, liner: null };
    const tasks = tasksOf(RIVERSIDE, fourByEight("a", { bottom: mesh }));
    expect(tasks.some(({ id }) => id === "renewal-mesh")).toBe(false);
    expect(taskOf(tasks, "renewal-boards-douglas-fir").years).toEqual([6]);
  });

  it("repeat within a longer horizon", () => {
    const garden = gardenWith({ site: RIVERSIDE }, fourByEight("a"));
    const tasks = yearRound({ ...garden, prices: { ...garden.prices, horizon: 20 } });
    expect(taskOf(tasks, "renewal-boards-douglas-fir").years).toEqual([6, 12, 18]);
  });
});

describe("the first year", () => {
  it("asks for a pot test of untested fill in time before it is needed, and for no compost on top", () => {
    const untested = fourByEight("a", { fill: { tested: false } });
    const tasks = tasksOf(RIVERSIDE, untested);
    const bioassay = taskOf(tasks, "bioassay-fill");
    expect(bioassay.years).toEqual([0]);
    expect(bioassay.from + bioassay.days).toBeLessThan(day("04-28"));
    expect(bioassay.quantities).toContain("18 pea or bean seeds");
    expect(comesUpIn(taskOf(tasks, "top-up-spring"), 0)).toBe(false);
  });

  it("asks for none of fill that was tested, of the yard's own soil, or of a bed that stands", () => {
    const none = tasksOf(
      RIVERSIDE,
      fourByEight("a", { fill: { tested: true } }),
      fourByEight("b", { x: 3000, fill: { tested: false, way: "native" } }),
      fourByEight("c", { x: 6000, fill: { tested: false }, already: { courses: 2, soilDepth: 200 } }),
    );
    expect(none.some(({ kind }) => kind === "bioassay")).toBe(false);
  });
});

describe("where there is no frost", () => {
  const tropics = { latitude: 5.2, winter: "mild", lastFrost: null, firstFrost: null } as const;

  it("nothing is said of frost, ice or a killed crop", () => {
    const tasks = yearRound(mixedGarden(tropics));
    expect(tasks.filter(({ kind }) => kind === "winter")).toEqual([]);
    for (const { kind, title, detail, why } of tasks) {
      if (kind !== "sow") expect(`${title} ${detail} ${why}`).not.toMatch(/frost|freez|winter/i);
    }
  });

  it("a resting bed is covered by what grows in warmth, and ended after forty days", () => {
    const tasks = yearRound(mixedGarden(tropics));
    const [sow, end] = [taskOf(tasks, "cover-sow-salads"), taskOf(tasks, "cover-end-salads")];
    expect(sow.title).toBe("Sow buckwheat as a cover crop");
    expect((end.from - sow.from + 365) % 365).toBe(40);
  });

  it("a frost that is typed counts wherever the garden lies", () => {
    const highland = tasksOf({ ...tropics, lastFrost: "02-10", firstFrost: "12-02" }, fourByEight("a"));
    expect(highland.some(({ id }) => id === "winter-put-away")).toBe(true);
  });
});
