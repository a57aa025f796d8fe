import DxfParser from "dxf-parser";
import { describe, expect, it } from "vitest";
import { dxfOf } from "../../../app/sharing/dxf.ts";
import { fileNameOf } from "../../../app/sharing/file-name.ts";
import {
  buildSheet,
  checkGarden,
  describeItem,
  LAYERS,
  linework,
  nameOf,
  plainText,
  readGardenText,
  takeoff,
  takeoffCsv,
  writeGarden,
} from "../../../src/index.ts";
import { bed, gardenOf } from "../../helpers/garden-of.ts";
import { HOSTILE_NAMES, hostileGarden } from "../../helpers/hostile-names.ts";

/** Characters that no shown or drawn text may hold: controls, those that turn directions about, halves of letters. */
const ODD = /[\p{Cc}\p{Cs}\u2028\u2029\u202A-\u202E\u2066-\u2069\uFFFE\uFFFF]/u;

/** As many gardens as it takes for each name to stand on each kind of thing's neighbour, and once on the garden. */
const gardens = HOSTILE_NAMES.map((_, shift) => hostileGarden(shift % 2 === 0 ? "us" : "metric", shift));

describe("text that would do harm", () => {
  it("is kept by the garden as it was typed, whatever it is", () => {
    for (const garden of gardens) expect(readGardenText(writeGarden(garden))).toEqual(garden);
  });

  it("loses nothing that can be read when it is shown", () => {
    expect(plainText("Salads \u202Egpj.exe\u202C")).toBe("Salads gpj.exe");
    expect(plainText("two\r\nlines")).toBe("two lines");
    expect(plainText("half \uD83C")).toBe("half \uFFFD");
    for (const fine of ["Tomaten & Erbsen", "עגבניות", "हिन्दी", "\u{1F331} herbs", "<b>", "ab\u200Dc"])
      expect(plainText(fine)).toBe(fine);
  });

  it("stands in no finding, label, list or sheet with what turns sentences about", () => {
    for (const garden of gardens.slice(0, 2)) {
      const { marks, outline } = buildSheet(garden, "a4");
      const words = [
        ...garden.items.flatMap((item) => [nameOf(item), describeItem(item, garden.units)]),
        ...checkGarden(garden).flatMap(({ title, why, waysOut }) => [
          title,
          why,
          ...waysOut.map(({ label }) => label),
        ]),
        ...takeoff(garden).lines.flatMap(({ what, how }) => [what, how]),
        ...marks.flatMap((mark) => (mark.draw === "text" ? [mark.text] : [])),
        ...outline.flatMap(({ heading, lines }) => [heading, ...lines]),
      ];
      expect(words.length).toBeGreaterThan(200);
      expect(words.filter((word) => ODD.test(word))).toEqual([]);
    }
  }, 30_000);

  it("is shortened and broken on the sheet between letters, never within one", () => {
    const name = "\u{1F331}".repeat(40);
    const { marks } = buildSheet({ ...gardenOf(bed("a", { name })), name }, "letter");
    const texts = marks.flatMap((mark) => (mark.draw === "text" ? [mark.text] : []));
    expect(texts.some((text) => text.includes("\u{1F331}"))).toBe(true);
    expect(texts.filter((text) => /\p{Cs}/u.test(text))).toEqual([]);
  });
});

describe("a spreadsheet", () => {
  /** RFC 4180, letter by letter. */
  function rowsOf(csv: string): string[][] {
    const rows: string[][] = [[""]];
    let quoted = false;
    for (let i = 0; i < csv.length; i++) {
      const row = rows.at(-1)!;
      const letter = csv[i]!;
      if (quoted) {
        if (letter !== '"') row[row.length - 1] += letter;
        else if (csv[i + 1] === '"') row[row.length - 1] += csv[i++]!;
        else quoted = false;
      } else if (letter === '"') quoted = true;
      else if (letter === ",") row.push("");
      else if (letter === "\r" && csv[i + 1] === "\n") {
        rows.push([""]);
        i++;
      } else row[row.length - 1] += letter;
    }
    expect(quoted, "each quoted field is closed").toBe(false);
    return rows.slice(0, -1);
  }

  it("is given no formula and no broken row, whatever things, garden and supplier are called", () => {
    for (const garden of gardens) {
      const list = takeoff(garden);
      const rows = rowsOf(takeoffCsv(list, garden));
      expect(rows).toHaveLength(list.lines.length + 2);
      for (const row of rows) {
        expect(row).toHaveLength(12);
        // Source: OWASP, CSV Injection: what a spreadsheet takes for a formula begins with one of these.
        expect(
          row.filter((field) => /^[=+\-@\t\r\n＝＋－＠]/u.test(field) && Number.isNaN(Number(field))),
        ).toEqual([]);
      }
    }
  });
});

describe("a drawing", () => {
  it("has the same strokes on the same layers whatever things are called", () => {
    for (const garden of gardens) {
      const drawing = new DxfParser().parseSync(dxfOf(garden));
      const strokes = linework(garden);
      expect(drawing?.entities.map(({ layer }) => layer)).toEqual(strokes.map(({ layer }) => layer));
      expect(Object.keys(drawing?.tables.layer.layers ?? {}).sort()).toEqual(["0", ...LAYERS].sort());
    }
  });

  /** Codes of TEXT as a drawing program reads them. */
  const lettered = (text: string) =>
    text.replace(/%%%|%%[a-z]|\\U\+([0-9A-F]{4})|\^(.)/gi, (code, hex?: string, caret?: string) => {
      if (code === "%%%") return "%";
      if (hex) return String.fromCharCode(Number.parseInt(hex, 16));
      return caret === " " ? "^" : `[${code}]`;
    });

  it.each(["%%u%%d", "100 % %%", "%", "%%%", "\\U+0041", "\\P{x}", "^J", "C:\\beds^2"])(
    "shows a name as it is, with no code in it carried out: %s",
    (name) => {
      const drawing = new DxfParser().parseSync(dxfOf(gardenOf(bed("a", { name }))));
      const texts = drawing?.entities.flatMap((entity) =>
        entity.type === "TEXT" ? [Reflect.get(entity, "text")] : [],
      );
      expect(texts?.map(lettered)).toContain(name);
    },
  );
});

describe("the name of a file", () => {
  it.each([
    ["Heron Lane back yard", "heron-lane-back-yard.dxf"],
    ["Grüner Gärten", "grüner-gärten.dxf"],
    ["Gru\u0308n", "grün.dxf"],
    ["हिन्दी", "हिन्दी.dxf"],
    ["../../etc/passwd", "etc-passwd.dxf"],
    ["CON", "con-garden.dxf"],
    ["<script>", "script.dxf"],
    ["a\u202Egpj", "a-gpj.dxf"],
    ["\u{1F331}", "garden.dxf"],
    ["", "garden.dxf"],
  ])("of %j is %s", (name, file) => {
    expect(fileNameOf(name, "dxf")).toBe(file);
  });

  it("is letters, digits and dashes, not longer than file systems take, for any name", () => {
    for (const name of [...HOSTILE_NAMES, "漢".repeat(80), "\u{20000}".repeat(40)]) {
      const file = fileNameOf(name, "bedwright.json");
      expect(file).toMatch(/^[\p{L}\p{M}\p{N}][\p{L}\p{M}\p{N}-]*\.bedwright\.json$/u);
      expect(new TextEncoder().encode(file).length).toBeLessThanOrEqual(255);
    }
  });
});
