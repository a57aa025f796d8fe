/**
 * The drawing office's colours for the canvas; `tokens.css` holds the same for the page, and a test compares them.
 * Text keeps 4.5:1 on its ground, lines and marks 3:1, on the board by day as on the one under a lamp.
 */
export interface Inks {
  readonly paper: string;
  readonly sheet: string;
  readonly shade: string;
  readonly ink: string;
  readonly faint: string;
  readonly hair: string;
  readonly accent: string;
  readonly accentWash: string;
  readonly water: string;
  readonly sun: string;
  readonly leaf: string;
  readonly soil: string;
  readonly soilMark: string;
  /** Ground that the sun does not reach. */
  readonly shadow: string;
  /** Under the hatches of what is built and of what lies on the ground: close to the sheet, for the hatch says what it is. */
  readonly building: string;
  readonly groundSoil: string;
  readonly groundLawn: string;
  readonly groundWeeds: string;
  readonly groundBark: string;
  readonly groundLooseGravel: string;
  readonly groundFirmGravel: string;
  readonly groundPaving: string;
  readonly groundDeck: string;
  readonly groundRoof: string;
}

export type InkName = keyof Inks;

/** Ink on warm paper. */
export const LIGHT: Inks = {
  paper: "#f7f2e6",
  sheet: "#fbf7ec",
  shade: "#eee8d6",
  ink: "#22303a",
  faint: "#5b6670",
  hair: "#d9d1bd",
  accent: "#b3431c",
  accentWash: "#f4e4d6",
  water: "#2b6f8f",
  sun: "#8f6208",
  leaf: "#4d6b3c",
  soil: "#f0e4c8",
  soilMark: "#b8955a",
  shadow: "#22303a",
  building: "#e7e3d4",
  groundSoil: "#f6ecd6",
  groundLawn: "#f1f1df",
  groundWeeds: "#f0efdb",
  groundBark: "#efe3cb",
  groundLooseGravel: "#efece4",
  groundFirmGravel: "#ece9e0",
  groundPaving: "#e9e8e2",
  groundDeck: "#efe6d4",
  groundRoof: "#eae7de",
};

/** Paper-coloured lines on a dark, warm board, as under a lamp in the evening. */
export const DARK: Inks = {
  paper: "#1f1b15",
  sheet: "#29241c",
  shade: "#342e24",
  ink: "#efe5d0",
  faint: "#b5aa94",
  hair: "#4d4536",
  accent: "#f0895c",
  accentWash: "#46301f",
  water: "#7dbad6",
  sun: "#e0ac49",
  leaf: "#a3c187",
  soil: "#3b3122",
  soilMark: "#98794a",
  shadow: "#000000",
  building: "#38332a",
  groundSoil: "#312a1e",
  groundLawn: "#2c2e20",
  groundWeeds: "#2e2f1f",
  groundBark: "#382c1c",
  groundLooseGravel: "#322f29",
  groundFirmGravel: "#36322b",
  groundPaving: "#36342f",
  groundDeck: "#372d20",
  groundRoof: "#35322b",
};

/** What is otherwise quiet, for a device that asks for more contrast. */
export const SHARPER = {
  light: { faint: "#333d46", hair: "#857c66", soilMark: "#83632c" },
  dark: { faint: "#dcd2bd", hair: "#978a71", soilMark: "#c39f67" },
} as const satisfies Record<string, Partial<Inks>>;

/**
 * The colours that are drawn with now. They are read while something is drawn and never kept: another board or
 * another contrast lays others.
 */
export const INK: Inks = { ...LIGHT };

let age = 0;

/** Grows whenever the colours have become others, for those who remember what is drawn in them. */
export const inkAge = (): number => age;

/** Lays these colours; what is drawn already has to be drawn again. */
export function layInks(inks: Inks): void {
  Object.assign(INK, inks);
  age += 1;
}

/** As named by the lettering's package. */
export const LETTERING = "Barlow Semi Condensed";
