/**
 * The drawing office's palette for the canvas; `tokens.css` holds the same for the page, and a test compares them.
 * Text keeps 4.5:1 on its ground, lines and marks 3:1.
 */
export const INK = {
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
} as const;

/** As named by the lettering's package. */
export const LETTERING = "Barlow Semi Condensed";
