import { plainText } from "../garden/plain-text.ts";
import { GRADE_SIGNS, SIGN_PARTS } from "./grade-signs.ts";
import { HATCH_TILES } from "./hatch-tiles.ts";
import { isMeasured, POINT, textWidth } from "./lettering.ts";
import type { Mark } from "./types.ts";

/** What a drawing is, for those who hear it and for programs that list files. */
export interface SvgAbout {
  readonly title: string;
  readonly description: string;
}

/**
 * The lettering first, then faces of about its width that devices have. Words keep the width they were laid out with,
 * whichever of them is there.
 */
const FACES = "'Barlow Semi Condensed','DIN Alternate','Roboto Condensed','Arial Narrow',Arial,sans-serif";
const HALO = 0.9;

/**
 * Marks as an SVG document of its own, in true size: a unit is a millimetre of paper. It needs nothing beside it, no
 * style sheet, no font, no script, and names in it are text and nothing else.
 *
 * @param size of the whole drawing, mm
 */
export function svgDocument(
  marks: readonly Mark[],
  size: { readonly width: number; readonly height: number },
  { title, description }: SvgAbout,
): string {
  const [width, height] = [figure(size.width), figure(size.height)];
  const used = new Set(marks.flatMap((mark) => (mark.draw === "line" && mark.fill ? [mark.fill] : [])));
  const hatches = HATCH_TILES.filter(({ hatch }) => used.has(hatch));
  return [
    '<?xml version="1.0" encoding="UTF-8"?>',
    `<svg xmlns="http://www.w3.org/2000/svg" width="${width}mm" height="${height}mm" viewBox="0 0 ${width} ${height}" role="img" aria-labelledby="title description" font-family="${FACES}">`,
    `<title id="title">${escaped(title)}</title>`,
    `<desc id="description">${escaped(description)}</desc>`,
    `<defs>${hatches.map(hatchElement).join("")}</defs>`,
    `<rect width="${width}" height="${height}" fill="#fff"/>`,
    ...marks.map(element),
    "</svg>",
    "",
  ].join("\n");
}

function hatchElement({ hatch, size, turn, stroke }: (typeof HATCH_TILES)[number]): string {
  const turned = turn ? ` patternTransform="rotate(${turn})"` : "";
  return `<pattern id="${hatch}" width="${size}" height="${size}" patternUnits="userSpaceOnUse"${turned}><rect width="${size}" height="${size}" fill="#fff"/><path d="${stroke.path}" stroke="${stroke.colour}" stroke-width="${stroke.width}" fill="none"/></pattern>`;
}

function element(mark: Mark): string {
  switch (mark.draw) {
    case "line":
      return lineElement(mark);
    case "text":
      return textElements(mark);
    case "grade": {
      const [x, y] = mark.at;
      const strokes = GRADE_SIGNS[mark.grade].map(
        ({ path, fill, colour, width }) =>
          `<path d="${path}" fill="${fill}" stroke="${colour}" stroke-width="${width}" stroke-linejoin="round"/>`,
      );
      const place = `translate(${figure(x)} ${figure(y)}) scale(${figure(mark.size / SIGN_PARTS)})`;
      return `<g transform="${place}">${strokes.join("")}</g>`;
    }
    default: {
      const never: never = mark;
      throw new RangeError(`unknown mark ${JSON.stringify(never)}`);
    }
  }
}

function lineElement({ points, closed, pen, dash, fill }: Extract<Mark, { draw: "line" }>): string {
  const path = points.map(([x, y]) => `${figure(x)} ${figure(y)}`).join("L");
  const filled = fill === "ink" ? "#000" : fill === "paper" ? "#fff" : fill ? `url(#${fill})` : "none";
  const dashed = dash ? ` stroke-dasharray="${dash.join(" ")}"` : "";
  return `<path d="M${path}${closed ? "Z" : ""}" fill="${filled}" stroke="#000" stroke-width="${pen}"${dashed}/>`;
}

function textElements({ at, text, pt, weight, anchor, turn, halo }: Extract<Mark, { draw: "text" }>): string {
  const [x, y] = [figure(at[0]), figure(at[1])];
  // Letters that the lettering has not got are as wide as the face makes them that has.
  const width = isMeasured(text)
    ? ` textLength="${figure(textWidth(text, pt, weight))}" lengthAdjust="spacingAndGlyphs"`
    : "";
  const turned = turn ? ` transform="rotate(${figure(turn)} ${x} ${y})"` : "";
  const bold = weight === "bold" ? ' font-weight="600"' : "";
  const attributes = `x="${x}" y="${y}" font-size="${figure(pt * POINT)}"${bold} text-anchor="${anchor}"${width}${turned}`;
  const words = escaped(text);
  // Not every program can draw the outline of letters under them: the halo is a text of its own.
  const under = halo
    ? `<text ${attributes} aria-hidden="true" fill="none" stroke="#fff" stroke-width="${HALO}" stroke-linejoin="round">${words}</text>`
    : "";
  return `${under}<text ${attributes}>${words}</text>`;
}

const ENTITIES: Readonly<Record<string, string>> = {
  "&": "&amp;",
  "<": "&lt;",
  ">": "&gt;",
  '"': "&quot;",
  "'": "&#39;",
};

/** @source XML 1.0, sections 2.2 (characters that a document may hold) and 2.4 (those that have to be written otherwise) */
const escaped = (text: string): string => plainText(text).replace(/[&<>"']/g, (letter) => ENTITIES[letter]!);

/** A ten-thousandth of a millimetre: at 1 : 100 a hundredth of one on the ground. */
const figure = (mm: number): number => Math.round(mm * 10_000) / 10_000;
