import { readFileSync } from "node:fs";

/** Published and computed check values of the sun, each section with its source; looked up, never retyped. */
interface Sections {
  readonly spa_a51: {
    readonly inputs: { readonly utc: string; readonly lat: number; readonly lon: number };
    readonly expected: Readonly<Record<string, number>>;
  };
  readonly meeus_25a: {
    readonly inputs: { readonly jde: number };
    readonly expected: Readonly<Record<string, unknown>>;
  };
  readonly solar_grid: Cases<{
    lat: number;
    lon: number;
    utc: string;
    place: string;
    ae_alt_airless: number;
    ae_alt_apparent: number;
    ae_az: number;
    sc2_alt_apparent: number;
  }>;
  readonly horizons: Cases<{
    lat: number;
    lon: number;
    utc: string;
    place: string;
    alt_apparent: number;
    az: number;
  }>;
  readonly rise_set: Cases<{
    lat: number;
    lon: number;
    place: string;
    source: string;
    event: "rise" | "set";
    published_utc: string;
  }>;
  readonly polar: Cases<{ lat: number; lon: number; date: string; expected: string }>;
  readonly fao_ra_examples: Cases<{
    inputs: { lat: number; date: string; J: number };
    expected: { N_h: number; declination_rad?: number };
  }>;
  readonly fao_table26_27: Cases<{ lat: number; N_h: readonly number[] }>;
  readonly shadow: Cases<{
    height: number;
    altitude_deg: number;
    shadow_length: number;
    sun_azimuth_deg?: number;
    shadow_direction_deg?: number;
  }>;
  readonly direct_sun: Cases<{
    lat: number;
    lon: number;
    date: string;
    wall_side: "N" | "E" | "S" | "W";
    h: number;
    d: number;
    open_sky_hours: number;
    direct_sun_hours: number;
    decl_noon_deg: number;
  }>;
  readonly finite_wall: Cases<{
    lat: number;
    date: string;
    d: number;
    x1_east: number;
    x2_east: number;
    h: number;
    direct_sun_hours: number;
  }>;
  readonly season_daylength: Cases<{
    lat: number;
    from: string;
    to: string;
    days: number;
    eq34_avg_h: number;
    ae_avg_h: number;
  }>;
  readonly sun_definitions: Cases<{
    readonly term: string;
    readonly source: string;
    readonly hours?: readonly [number, number];
    readonly hours_min?: number;
    readonly hours_max?: number;
    readonly split_allowed?: boolean;
  }>;
  readonly season: Cases<{ hemisphere?: "north" | "south"; from?: string; to?: string }>;
}
interface Cases<Row> {
  readonly cases: readonly (Row & { readonly id: string })[];
}

const file = new URL("./sun.json", import.meta.url);
const read = JSON.parse(readFileSync(file, "utf8")) as {
  readonly about: { readonly tolerances: Readonly<Record<string, number>> };
  readonly sections: Sections;
};

export const SUN = read.sections;
export const SUN_SECTIONS = Object.keys(read.sections);

/** @throws Error for a tolerance the file does not give */
export function tolerance(name: string): number {
  const value = read.about.tolerances[name];
  if (typeof value !== "number") throw new Error(`no tolerance ${name}`);
  return value;
}
