import { readFileSync } from "node:fs";

/** Published and computed check values of water, each section with its source; looked up, never retyped. */
interface Sections {
  readonly fao_ra_examples: Cases<{
    inputs: { lat: number; J: number };
    expected: {
      dr?: number;
      declination_rad?: number;
      omega_s_rad?: number;
      Ra_MJ_m2_d: number;
      Ra_mm_d?: number;
      N_h: number;
    };
    unrounded_eq21_eq34?: { Ra: number; N: number };
  }>;
  readonly fao_table26_27: Cases<{ lat: number; Ra_MJ_m2_d: readonly number[]; N_h: readonly number[] }>;
  readonly pm: Cases<{
    inputs: Readonly<Record<string, number>>;
    expected: Readonly<Record<string, number>>;
    exact: Readonly<Record<string, number>>;
  }>;
  readonly hargreaves: Cases<{
    inputs: { lat: number; J: number; Tmax: number; Tmin: number; Ra_MJ: number };
    expected: { ET0_mm_d: number };
    exact?: number;
  }>;
  readonly kc: Cases<{
    crop: string;
    kc_ini: number;
    kc_mid: number;
    kc_end: number | string;
    height_m?: number | string;
    zr_m?: readonly [number, number];
    p?: number;
  }> & { readonly staked: unknown };
  readonly p_adjust: Cases<{ p_table: number; ETc: number; expected: number }>;
  readonly soil_water: Cases<{
    soil: string;
    fc: readonly number[];
    wp: readonly number[];
    aw: readonly number[];
    rew_mm: readonly number[];
    tew_mm: readonly number[];
  }>;
  readonly taw: Cases<{ fc: number; wp: number; zr_m: number; p: number; TAW_mm: number; RAW_mm: number }>;
  readonly fw: Cases<{ event: string; fw: readonly [number, number] }>;
  readonly water_volume: Cases<{
    area_sqft?: number;
    depth_in?: number;
    gal?: number;
    area_m2?: number;
    depth_mm?: number;
    litre?: number;
    ET0_in_d?: number;
    kc?: number;
    days?: number;
  }>;
  readonly water_rules: Cases<{ rule: string; inches?: readonly [number, number] }>;
  readonly hazen_williams: Cases<{
    q_gpm: number;
    d_in: number;
    C: number;
    length_ft: number;
    loss_ft_per_100ft: number;
    loss_ft: number;
    loss_psi: number;
    velocity_ft_s: number;
  }>;
  readonly christiansen: Cases<{ N: number; F: number }>;
  readonly drip_lateral: Cases<{
    tubing_in: number;
    C: number;
    emitters: number;
    gph_each: number;
    length_ft: number;
    inlet_gpm: number;
    loss_ft: number;
    loss_psi: number;
  }>;
  readonly drip_rate: Cases<{
    gph: number;
    emitter_in?: number;
    line_in?: number;
    in_per_h?: number;
    bed_ft?: readonly [number, number];
    lines?: number;
    emitters_per_line?: number;
    depth_in?: number;
    hours?: number;
  }>;
  readonly drip_facts: Cases<Readonly<Record<string, unknown>>>;
  readonly rate_conversion: Cases<{
    lb_acre: number;
    lb_1000sqft?: number;
    oz_100sqft?: number;
    area_sqft?: number;
    oz?: number;
  }>;
}
interface Cases<Row> {
  readonly cases: readonly (Row & { readonly id: string })[];
}

const file = new URL("./water.json", import.meta.url);
const read = JSON.parse(readFileSync(file, "utf8")) as {
  readonly about: { readonly tolerances: Readonly<Record<string, number>> };
  readonly sections: Sections;
};

export const WATER = read.sections;

/** Each section and the ids of its cases. */
export const WATER_IDS: readonly (readonly [section: string, ids: readonly string[]])[] = Object.entries({
  ...WATER,
}).map(([section, { cases }]) => [section, cases.map((row: { readonly id: string }) => row.id)]);

/** One case of a section. @throws Error for a case that is not there */
export function waterCase<S extends keyof Sections>(section: S, id: string): Sections[S]["cases"][number] {
  const found = WATER[section].cases.find((row) => row.id === id);
  if (!found) throw new Error(`no case ${id} in ${section}`);
  return found;
}

/** A number that a case has to have. */
export function have(value: number | undefined, what: string): number {
  if (typeof value !== "number") throw new Error(`the case has no ${what}`);
  return value;
}

/** @throws Error for a tolerance the file does not give */
export function waterTolerance(name: string): number {
  const value = read.about.tolerances[name];
  if (typeof value !== "number") throw new Error(`no tolerance ${name}`);
  return value;
}

/** Half of the last digit that is printed, and a thousandth of it for the computer's own rounding. */
export function printed(value: number): number {
  const decimals = `${value}`.split(".")[1]?.length ?? 0;
  return 0.5 * 10 ** -decimals * 1.001;
}
