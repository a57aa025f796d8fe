import type { BedWater, WateredCrop } from "../../src/water/bed-need.ts";
import type { Climate, Place, ReferenceMonth } from "../../src/water/climate.ts";

/** Temperatures and rain of a made-up inland place at 40° north: cold dry winters, hot summers. January first. */
export const INLAND: Climate = [
  [7, -8, 11],
  [9, -6, 13],
  [13, -3, 33],
  [16, 1, 43],
  [22, 6, 57],
  [28, 11, 48],
  [32, 15, 55],
  [30, 14, 45],
  [26, 9, 32],
  [19, 2, 27],
  [12, -4, 16],
  [7, -8, 9],
].map(([maxC = 0, minC = 0, rain = 0]) => ({ maxC, minC, rain, humidity: null, sunshine: null, wind: null }));

export const INLAND_PLACE: Place = { latitude: 40, altitudeM: 1600, setting: "interior" };

/** A year turned on by so many months. */
export const turned = <T>(year: readonly T[], months: number): T[] =>
  year.map((_, month) => year[(month + 12 - months) % 12]!);

export const rainOf = (climate: Climate): number[] => climate.map(({ rain }) => rain);

export const month = (over: Partial<ReferenceMonth> = {}): ReferenceMonth => ({
  et0: 5,
  method: "hargreaves",
  guessed: [],
  windMs: 2,
  lowestHumidityPercent: 45,
  ...over,
});

export const planting = (over: Partial<WateredCrop> = {}): WateredCrop => ({
  crop: "tomato",
  plantedOn: 135,
  days: 120,
  share: 1,
  onSupports: false,
  ...over,
});

/** 1.2 m by 2.4 m, 280 mm of loam over a hard floor. */
export const bedOf = (plantings: readonly WateredCrop[], over: Partial<BedWater> = {}): BedWater => ({
  areaMm2: 1200 * 2400,
  room: { depth: 280, soil: { drained: 0.25, wilting: 0.12 }, ground: null },
  plantings,
  rainedOn: true,
  wetting: null,
  mulchedShare: 0,
  ...over,
});
