import { practice, published, type Source } from "../garden/source.ts";

/**
 * What the soil does to the frame: pressure on the wall, bow of a board between its supports, stakes, screws and
 * dead load. Lengths in mm, unit weights in kN/m³, pressures in kPa, stresses in MPa.
 */

export const STRUCTURE_SOURCES = {
  rankine: published("Rankine's active earth pressure, standard soil mechanics"),
  beam: published("simply supported beam under a uniform load: 5wL⁴/384EI, wL²/8"),
  soil: practice(
    "saturated mixes weigh 68 to 83 lb/ft³ (a soil yard's measurements), wet topsoil 100 to 120: 100 is used",
  ),
  stakes: practice("supports every 4 to 6 ft along the side; ceil(length / spacing) - 1 between the ends"),
  screws: practice("per board end at a post: 2 up to a 2x6, 3 up to a 2x10, 4 for a 2x12"),
} satisfies Record<string, Source>;

/** 100 lb/ft³, the design weight of wet garden soil. */
export const SOIL_UNIT_WEIGHT = 15.7087;
export const WATER_UNIT_WEIGHT = 9.80219;
/** Angle of internal friction of loose garden soil, degrees. Common practice. */
export const SOIL_FRICTION = 30;
/** 1,000,000 psi: the low end for softwood boards, wet service. */
export const BOARD_STIFFNESS = 6894.76;

/**
 * Share of the soil's vertical pressure that it puts on a wall which may give a little: tan²(45 - φ/2).
 * @param friction angle of internal friction φ, degrees, 0 (a liquid) to below 90
 * @throws RangeError outside that range
 */
export function activePressureCoefficient(friction: number): number {
  if (!(friction >= 0 && friction < 90)) throw new RangeError(`friction angle ${friction} is not in [0, 90)`);
  return Math.tan(((45 - friction / 2) * Math.PI) / 180) ** 2;
}

export interface WallPressure {
  /** At the foot of the wall, kPa. */
  readonly atFoot: number;
  /** On a metre of wall, kN. */
  readonly force: number;
  /** Height at which that force acts, mm above the foot. */
  readonly actsAt: number;
  /** Overturning moment on a metre of wall, kN·m. */
  readonly moment: number;
}

/**
 * Push of level soil on a wall it stands full height behind.
 * @param height of the soil, mm
 * @param drained false where water stands to the top: buoyant soil and the water's own pressure
 */
export function wallPressure(
  height: number,
  { unitWeight = SOIL_UNIT_WEIGHT, friction = SOIL_FRICTION, drained = true } = {},
): WallPressure {
  const metres = height / 1000;
  const coefficient = activePressureCoefficient(friction);
  const perMetre = drained
    ? coefficient * unitWeight
    : coefficient * (unitWeight - WATER_UNIT_WEIGHT) + WATER_UNIT_WEIGHT;
  const force = (perMetre * metres ** 2) / 2;
  return { atFoot: perMetre * metres, force, actsAt: height / 3, moment: (force * metres) / 3 };
}

export interface BoardLoad {
  /** Dressed size of the board on edge, mm. */
  readonly thickness: number;
  readonly height: number;
  /** Depth of the board's lower edge below the soil's surface, mm. */
  readonly depth: number;
  /** Between supports, mm. */
  readonly span: number;
  readonly unitWeight?: number;
  readonly friction?: number;
  /** Modulus of elasticity, MPa. */
  readonly stiffness?: number;
}

export interface BoardBow {
  /** At the middle of the board's height, kPa. */
  readonly pressure: number;
  /** N per mm of length, which is kN/m. */
  readonly lineLoad: number;
  /** Greatest bending stress, MPa. */
  readonly bending: number;
  /** How far the middle of the span bows outwards, mm. */
  readonly deflection: number;
}

/**
 * How far one board bows between two supports, loaded evenly with the soil pressure at its mid height. Ends are
 * taken as free to turn, so a board that runs on past a stake bows less than this.
 */
export function boardBow({
  thickness,
  height,
  depth,
  span,
  unitWeight = SOIL_UNIT_WEIGHT,
  friction = SOIL_FRICTION,
  stiffness = BOARD_STIFFNESS,
}: BoardLoad): BoardBow {
  const middle = Math.max(0, depth - height / 2);
  const pressure = activePressureCoefficient(friction) * unitWeight * (middle / 1000);
  const lineLoad = (pressure * height) / 1000;
  const inertia = (height * thickness ** 3) / 12;
  const moment = (lineLoad * span ** 2) / 8;
  return {
    pressure,
    lineLoad,
    bending: (moment * thickness) / 2 / inertia,
    deflection: (5 * lineLoad * span ** 4) / (384 * stiffness * inertia),
  };
}

/**
 * Stakes between the ends of a side so that no span is longer than `every`.
 * @throws RangeError if `every` is not above 0
 */
export function midStakes(
  length: number,
  every: number,
): { readonly count: number; readonly spacing: number } {
  if (!(every > 0)) throw new RangeError(`stakes every ${every} mm`);
  // A side that is longer than a whole number of spans by less than can be measured needs no further stake.
  const count = Math.max(0, Math.ceil(length / every - 1e-4) - 1);
  return { count, spacing: length / (count + 1) };
}

const SCREWS_BY_HEIGHT: readonly { readonly upTo: number; readonly screws: number }[] = [
  { upTo: 160, screws: 2 },
  { upTo: 240, screws: 3 },
  { upTo: Number.POSITIVE_INFINITY, screws: 4 },
];

/** Screws at each end of a board, by its dressed height in mm. */
export const screwsPerEnd = (height: number): number =>
  SCREWS_BY_HEIGHT.find(({ upTo }) => height <= upTo)?.screws ?? 0;

/** Pressure of soil `depth` mm deep on what it stands on, kPa. */
export const soilLoad = (depth: number, unitWeight = SOIL_UNIT_WEIGHT): number => (unitWeight * depth) / 1000;

/** Depth of soil, mm, that alone uses up a floor's design load in kPa. */
export const depthForLoad = (load: number, unitWeight = SOIL_UNIT_WEIGHT): number =>
  (load / unitWeight) * 1000;
