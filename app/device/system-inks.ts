import type { Inks } from "../style/ink.ts";

/**
 * The plan in the few colours that the device forces on every page (forced-colors, CSS Color Adjust 1): a canvas is
 * left alone by the browser, so it is drawn in them here. Grades, hatches and dashes tell apart what colour no longer can.
 */
export function systemInks(): Inks {
  const probe = document.createElement("i");
  document.body.append(probe);
  const seen = (keyword: string): string => {
    probe.style.color = keyword;
    return getComputedStyle(probe).color;
  };
  const ground = seen("Canvas");
  const line = seen("CanvasText");
  const inks: Inks = {
    paper: ground,
    sheet: ground,
    shade: ground,
    ink: line,
    faint: line,
    hair: seen("color-mix(in srgb, GrayText 40%, Canvas)"),
    accent: seen("Highlight"),
    accentWash: ground,
    water: line,
    sun: line,
    leaf: line,
    soil: ground,
    soilMark: line,
    shadow: line,
    building: ground,
    groundSoil: ground,
    groundLawn: ground,
    groundWeeds: ground,
    groundBark: ground,
    groundLooseGravel: ground,
    groundFirmGravel: ground,
    groundPaving: ground,
    groundDeck: ground,
    groundRoof: ground,
  };
  probe.remove();
  return inks;
}
