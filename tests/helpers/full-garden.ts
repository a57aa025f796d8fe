import {
  BARROW,
  emptyGarden,
  freshId,
  type Garden,
  growing,
  type Item,
  newItem,
  type Units,
} from "../../src/index.ts";

/**
 * A garden with one of everything the barrow holds, in rows, and with every field that may differ from a new garden's
 * set to something else. What it looks like does not matter; that nothing of it gets lost does.
 */
export function fullGarden(units: Units): Garden {
  const items: Item[] = [];
  for (const [i, { preset }] of BARROW.entries()) {
    const at = [1500 + (i % 5) * 4321.5, 2500 + Math.floor(i / 5) * 5678.25] as const;
    items.push({
      ...newItem(preset, { id: freshId({ items }, preset), at, units }),
      name: `The ${preset}`,
      turn: i * 7.5,
    });
  }
  const bed = items.find((item) => item.kind === "bed");
  if (!bed) throw new RangeError("the barrow has no bed");
  const walls = [
    { made: "metal", height: 430, thickness: 0.8 },
    { made: "fabric", height: 310 },
    { made: "masonry", unitLength: 390, unitHeight: 190, thickness: 140, courses: 2 },
    { made: "mound", height: 205 },
  ] as const;
  for (const [i, wall] of walls.entries()) {
    items.push({
      ...bed,
      id: freshId({ items }, "bed"),
      at: [30_000 + i * 1700, -4000.125],
      wall,
      bottom: { mesh: { opening: 12.7 }, liner: i % 2 === 0 ? "fabric" : "sheet" },
      fill: {
        way: "layered",
        mixDepth: 310,
        belowRim: 13,
        recipe: { compost: 25, topsoil: 75, soilless: 0 },
        tested: true,
      },
      mulch: { material: "straw", depth: 55 },
      plantings: [
        ...growing("tomato"),
        {
          crop: "lettuce-head",
          from: "03-20",
          until: "06-01",
          set: "block",
          apart: 260,
          rowsApart: 310,
          run: "across",
          patch: { at: [120.5, -200], width: 400, length: 650.25 },
        },
      ],
      lastYear: ["kale", "garlic"],
      watering: {
        by: i === 0 ? "sprinkler" : "drip",
        rainedOn: i !== 1,
        drip: {
          run: "across",
          apart: 310,
          emittersApart: 155,
          emitterLh: 1.9,
          drawn:
            i === 2
              ? [
                  [
                    [-400, 0],
                    [400.5, 20],
                  ],
                ]
              : null,
        },
      },
      winter: (["mulch", "sheet", "nothing", "mulch"] as const)[i] ?? "mulch",
      trellis: 1830,
      legs: i === 0 ? 690 : null,
      already: i === 2 ? { courses: 1, soilDepth: 120 } : null,
      stage: i + 1,
    });
  }
  const empty = emptyGarden(units);
  return {
    ...empty,
    name: "One of everything",
    site: {
      ...empty.site,
      place: 'Quoted "somewhere"\n[1,\n  2\n]',
      north: -12.5,
      winter: "mild",
      wind: "windy",
      lastFrost: "04-26",
      timeZone: "Europe/Lisbon",
      season: { from: "05-01", to: "10-15" },
      skyline: [
        { azimuth: 80, altitude: 12.5 },
        { azimuth: 110.25, altitude: 3 },
      ],
    },
    gardener: { kneeling: false, barrow: false, wheelchair: true, child: true, edition: "a117-2017" },
    limits: { reach: 555, passingEvery: 0 },
    cutting: {
      ...empty.cutting,
      onHand: [{ board: "2x6", timber: "larch", length: 2438.4, count: 3 }],
      ownBoards: ["32x175mm"],
      aim: "least-waste",
      worthKeeping: 500,
    },
    prices: {
      ...empty.prices,
      asOf: "2026-10-02",
      supplier: "The yard by the canal",
      horizon: 15,
      own: { "board:2x6:douglas-fir:8ft": 9.75 },
    },
    climate: {
      station: "The airfield",
      altitude: 312.5,
      setting: "coast",
      gaugeHeight: 10_000,
      months: Array.from({ length: 12 }, (_, month) => ({
        maxC: 5 + month,
        minC: -2.5 + month,
        rain: 40.5 + month,
        humidity: month % 2 === 0 ? 70 : null,
        sunHours: month % 3 === 0 ? 4.5 : null,
        windMs: month % 4 === 0 ? 3.1 : null,
      })),
    },
    water: {
      tap: items.find(({ kind }) => kind === "tap")?.id ?? null,
      supply: { stillKPa: 340, openLh: 1500 },
      main: "threeQuarter",
      drawnMain: [
        [
          [0, 0],
          [1200.5, 0],
        ],
      ],
    },
    upkeep: { topUp: "advice", topUpsAYear: 2, cover: "oats", firstYear: 2027 },
    underlay: {
      picture: "0123456789abcdef".repeat(4),
      pixels: [1600, 1200],
      at: [5000, 4000.5],
      turn: 3.5,
      mmPerPixel: 12.5,
      opacity: 0.4,
      locked: true,
      data: null,
    },
    items,
  };
}
