import { describe, expect, it } from "vitest";
import {
  access,
  boundsOf,
  checkGarden,
  EXAMPLES,
  emptyGarden,
  type Garden,
  type Point,
  planPicture,
  takeoff,
} from "../../src/index.ts";
import { fullGarden } from "../helpers/full-garden.ts";
import { bed, gardenOf } from "../helpers/garden-of.ts";
import { HOSTILE_NAMES, hostileGarden } from "../helpers/hostile-names.ts";

/** Read as XML, by a parser of other people's; what is not well formed fails. */
function parsed(svg: string): Element {
  const document = new DOMParser().parseFromString(svg, "image/svg+xml");
  expect(document.querySelector("parsererror")?.textContent ?? "").toBe("");
  return document.documentElement;
}

const all = (root: Element, name: string): Element[] => [...root.querySelectorAll(name)];
const wordsOf = (root: Element): string[] =>
  all(root, "text")
    .filter((text) => !text.hasAttribute("aria-hidden"))
    .map((text) => text.textContent ?? "");

/** The corners of a path of straight lines. */
const cornersOf = (path: Element): Point[] =>
  [...(path.getAttribute("d") ?? "").matchAll(/[ML](-?[\d.]+) (-?[\d.]+)/g)].map(([, x, y]) => [
    Number(x),
    Number(y),
  ]);

const GARDENS: readonly [string, Garden][] = [
  ["an empty yard", emptyGarden("us")],
  ["one of everything", fullGarden("metric")],
  ...EXAMPLES.map(({ id, garden }): [string, Garden] => [id, garden]),
];

// What is found in a garden is looked into elsewhere, and takes its time.
const bare = emptyGarden("us");
const NOTHING_FOUND = { snags: [], access: access(bare), takeoff: takeoff(bare) };

describe("the plan as a picture", () => {
  const salads = bed("salads", { x: 2000, y: 3000, w: 1200, h: 2400, name: "Salads" });
  const garden = { ...gardenOf(salads), units: "metric" as const, name: "By the shed" };
  const picture = planPicture(garden, { date: "25 November 2026" });
  const svg = parsed(picture.svg);

  it("is in true size: its unit is a millimetre of paper", () => {
    expect(svg.getAttribute("width")).toBe(`${picture.widthMm}mm`);
    expect(svg.getAttribute("height")).toBe(`${picture.heightMm}mm`);
    expect(svg.getAttribute("viewBox")).toBe(`0 0 ${picture.widthMm} ${picture.heightMm}`);
    // ISO 5455 and the steps between that land plans use.
    expect([10, 20, 25, 50, 75, 100, 125, 150, 200]).toContain(picture.ratio);
    expect(picture.scaleText).toBe(`1 : ${picture.ratio}`);
  });

  it("has a bed of 1.2 by 2.4 m measure that on it, and the yard what it measures", () => {
    const sizes = all(svg, "path").map((path) => {
      const corners = cornersOf(path);
      if (corners.length < 4) return "";
      const { minX, minY, maxX, maxY } = boundsOf(corners);
      return `${Math.round((maxX - minX) * picture.ratio)} x ${Math.round((maxY - minY) * picture.ratio)}`;
    });
    expect(sizes).toContain("1200 x 2400");
    const yard = boundsOf(garden.yard);
    expect(sizes).toContain(`${yard.maxX - yard.minX} x ${yard.maxY - yard.minY}`);
  });

  it("has its title, its scale, the day, north, and each bed by name and size", () => {
    const words = wordsOf(svg);
    expect(words).toContain("By the shed");
    expect(words).toContain(`Drawn at ${picture.scaleText} · 25 November 2026 · 1 bed`);
    expect(words).toContain("N");
    expect(words).toContain("Salads, 120 × 240 cm");
    expect(words.some((text) => /the bar is .+ at 100 %/.test(text))).toBe(true);
    expect(svg.querySelector("title")?.textContent).toBe("Plan of By the shed");
    expect(svg.querySelector("desc")?.textContent).toContain(`${picture.ratio} mm on the ground`);
  });

  it("says how many snags its signs stand for", () => {
    const [example] = EXAMPLES;
    const snags = checkGarden(example.garden).filter(({ grade }) => grade === "must");
    expect(snags.length).toBeGreaterThan(0);
    const words = wordsOf(parsed(planPicture(example.garden).svg));
    expect(words).toContain(`${snags.length} to fix`);
  });

  it.each(GARDENS)("has all of %s within its edges, in letters of no less than 8 pt", (_name, one) => {
    const { svg: text, widthMm, heightMm } = planPicture(one);
    const root = parsed(text);
    for (const path of all(root, "svg > path")) {
      for (const [x, y] of cornersOf(path)) {
        expect(Math.min(x, y, widthMm - x, heightMm - y)).toBeGreaterThanOrEqual(0);
      }
    }
    for (const words of all(root, "text")) {
      const [x, y, size] = ["x", "y", "font-size"].map((name) => Number(words.getAttribute(name)));
      expect(size).toBeGreaterThanOrEqual((8 * 25.4) / 72 - 1e-3);
      expect(Math.min(x!, y!, widthMm - x!, heightMm - y!)).toBeGreaterThanOrEqual(0);
    }
    // ISO 216 A3 and ANSI B, either way up, hold it but for their keys.
    expect(Math.min(widthMm, heightMm)).toBeLessThanOrEqual(297);
  });

  it("keeps words as wide as they were laid out, whichever face is there to letter them", () => {
    const [title] = all(svg, "text");
    expect(title?.getAttribute("lengthAdjust")).toBe("spacingAndGlyphs");
    expect(Number(title?.getAttribute("textLength"))).toBeGreaterThan(20);
    const faces = svg.getAttribute("font-family") ?? "";
    expect(faces.endsWith("Arial,sans-serif")).toBe(true);
    expect(picture.svg).not.toMatch(/url\((?!#)|href|@import|<style|<script|<image|<foreignObject/);
  });

  it.each(HOSTILE_NAMES.map((name, shift) => [name, shift] as const))(
    "is well formed and nothing but a drawing where things are called %j",
    (_name, shift) => {
      const one = hostileGarden("us", shift);
      const { svg: text } = planPicture(one, { known: NOTHING_FOUND });
      const root = parsed(text);
      const names = new Set([...root.querySelectorAll("*")].map((element) => element.tagName));
      for (const name of names) {
        expect(["title", "desc", "defs", "pattern", "rect", "path", "g", "text"]).toContain(name);
      }
      const attributes = [...root.querySelectorAll("*")].flatMap((element) =>
        [...element.attributes].map((attribute) => attribute.name),
      );
      expect(attributes.filter((name) => /^on|href|style/.test(name))).toEqual([]);
      // XML 1.0, section 2.2: what a document may hold.
      expect(text).not.toMatch(/[^\t\n\r\u0020-\uD7FF\uE000-\uFFFD\u{10000}-\u{10FFFF}]/u);
    },
  );
});
