/**
 * Makes the signs ⅛ ⅜ ⅝ ⅞, which the lettering's Latin files leave out, of the font's own parts: small figures above,
 * the fraction stroke, the small eight below, set as the font sets its ¼ and ¾. Writes one small TrueType file a weight.
 * Run it again when the font's package changes: `node scripts/make-eighths.mjs`.
 */
import { writeFileSync } from "node:fs";
import { advanceOf, fontTables, glyphOf, outlineOf, partsOf } from "./font-file.mjs";

const WEIGHTS = [400, 500, 600];
const SIGNS = [
  { sign: "⅛", above: "1" },
  { sign: "⅜", above: "3" },
  { sign: "⅝", above: "5" },
  { sign: "⅞", above: "7" },
];

for (const weight of WEIGHTS) {
  const from = new URL(
    `../node_modules/@fontsource/barlow-semi-condensed/files/barlow-semi-condensed-latin-${weight}-normal.woff`,
    import.meta.url,
  );
  const to = new URL(`../app/style/fractions/eighths-${weight}.ttf`, import.meta.url);
  writeFileSync(to, eighths(fontTables(from), weight));
}

/** @param {Map<string, Buffer>} font */
function eighths(font, weight) {
  const glyph = (sign) => glyphOf(font.get("cmap"), sign.codePointAt(0));
  const parts = (sign) => partsOf(outlineOf(font, glyph(sign)));
  const [one, stroke, four] = parts("¼");
  const [three, wideStroke] = parts("¾");
  // The small figures stand in the font in the order of their worth, above and below.
  const above = (figure) => one.glyph + (Number(figure) - 1);
  const below = (figure) => four.glyph + (Number(figure) - 4);
  if (three.glyph !== above("3")) throw new RangeError("the font's small figures stand in another order");
  const raised = (figure) => {
    const [base] = partsOf(outlineOf(font, above(figure)));
    return base;
  };
  const eight = below("8");
  const afterStroke = four.x - stroke.x;

  // Simple outlines first, then what is put together of them.
  const simple = [...SIGNS.map(({ above: figure }) => raised(figure).glyph), stroke.glyph, eight];
  const at = new Map(simple.map((old, i) => [old, i + 1]));
  const composed = SIGNS.map(({ sign, above: figure }) => {
    const base = raised(figure);
    // After a one the stroke stands off, as the font has it in ¼; after wider figures as in ¾.
    const strokeAt =
      advanceOf(font, above(figure)) +
      (figure === "1" ? stroke.x - advanceOf(font, one.glyph) : wideStroke.x - advanceOf(font, three.glyph));
    const eightAt = strokeAt + afterStroke;
    return {
      sign,
      advance:
        eightAt +
        advanceOf(font, eight) +
        (advanceOf(font, glyph("¼")) - four.x - advanceOf(font, four.glyph)),
      parts: [
        { glyph: at.get(base.glyph), outline: outlineOf(font, base.glyph), x: base.x, y: base.y },
        { glyph: at.get(stroke.glyph), outline: outlineOf(font, stroke.glyph), x: strokeAt, y: 0 },
        { glyph: at.get(eight), outline: outlineOf(font, eight), x: eightAt, y: 0 },
      ],
    };
  });
  const outlines = [
    Buffer.alloc(0),
    ...simple.map((old) => outlineOf(font, old)),
    ...composed.map(({ parts: own }) => composite(own)),
  ];
  const advances = [
    0,
    ...simple.map((old) => advanceOf(font, old)),
    ...composed.map(({ advance }) => advance),
  ];
  const codes = composed.map(({ sign }, i) => ({ code: sign.codePointAt(0), glyph: 1 + simple.length + i }));
  return fontFile(font, weight, outlines, advances, codes);
}

/** @param {{ glyph: number, outline: Buffer, x: number, y: number }[]} parts */
function composite(parts) {
  const box = [2, 4, 6, 8].map((step, i) => {
    const edges = parts.map(({ outline, x, y }) => outline.readInt16BE(step) + (i % 2 === 0 ? x : y));
    return i < 2 ? Math.min(...edges) : Math.max(...edges);
  });
  const head = Buffer.alloc(10);
  head.writeInt16BE(-1, 0);
  for (const [i, edge] of box.entries()) head.writeInt16BE(edge, 2 + 2 * i);
  const bodies = parts.map(({ glyph, x, y }, i) => {
    const body = Buffer.alloc(8);
    const [WORDS, OFFSETS, MORE] = [1, 2, 0x20];
    body.writeUInt16BE(WORDS | OFFSETS | (i < parts.length - 1 ? MORE : 0), 0);
    body.writeUInt16BE(glyph, 2);
    body.writeInt16BE(x, 4);
    body.writeInt16BE(y, 6);
    return body;
  });
  return Buffer.concat([head, ...bodies]);
}

/** Puts the tables of a TrueType font together (OpenType specification, "Organization of an OpenType Font"). */
function fontFile(font, weight, outlines, advances, codes) {
  const copy = (tag) => Buffer.from(font.get(tag));
  const padded = outlines.map((outline) =>
    Buffer.concat([outline, Buffer.alloc((4 - (outline.length % 4)) % 4)]),
  );
  const glyf = Buffer.concat(padded);
  const loca = Buffer.alloc(4 * (padded.length + 1));
  padded.reduce((offset, outline, i) => {
    loca.writeUInt32BE(offset + outline.length, 4 * (i + 1));
    return offset + outline.length;
  }, 0);
  const hmtx = Buffer.alloc(4 * advances.length);
  advances.forEach((advance, i) => {
    hmtx.writeUInt16BE(advance, 4 * i);
    hmtx.writeInt16BE(outlines[i].length > 0 ? outlines[i].readInt16BE(2) : 0, 4 * i + 2);
  });
  const head = copy("head");
  head.writeUInt32BE(0, 8);
  head.writeInt16BE(1, 50);
  const hhea = copy("hhea");
  hhea.writeUInt16BE(advances.length, 34);
  const maxp = copy("maxp");
  maxp.writeUInt16BE(outlines.length, 4);
  const post = Buffer.alloc(32);
  post.writeUInt32BE(0x00030000, 0);
  const tables = [
    ["OS/2", copy("OS/2")],
    ["cmap", characterMap(codes)],
    ["glyf", glyf],
    ["head", head],
    ["hhea", hhea],
    ["hmtx", hmtx],
    ["loca", loca],
    ["maxp", maxp],
    ["name", names(weight)],
    ["post", post],
  ];
  return joined(tables);
}

/** Format 4, one segment a sign (OpenType specification, "cmap"). */
function characterMap(codes) {
  const segments = [...codes, { code: 0xffff, glyph: 0 }];
  const count = segments.length;
  const map = Buffer.alloc(16 + 8 * count);
  const power = 2 ** Math.floor(Math.log2(count));
  writeWords(map, 0, [4, map.length, 0, 2 * count, 2 * power, Math.log2(power), 2 * (count - power)]);
  segments.forEach(({ code, glyph }, i) => {
    map.writeUInt16BE(code, 14 + 2 * i);
    map.writeUInt16BE(code, 16 + 2 * count + 2 * i);
    map.writeUInt16BE(code === 0xffff ? 1 : (glyph - code) & 0xffff, 16 + 4 * count + 2 * i);
  });
  const header = Buffer.alloc(12);
  writeWords(header, 0, [0, 1, 3, 1]);
  header.writeUInt32BE(12, 8);
  return Buffer.concat([header, map]);
}

/** Family, style, licence (OpenType specification, "name"): it stays under the licence of what it is made of. */
function names(weight) {
  const said = [
    [0, "Copyright 2017 The Barlow Project Authors. Eighths put together of the font's own parts."],
    [1, "Bedwright Eighths"],
    [2, `${weight}`],
    [4, `Bedwright Eighths ${weight}`],
    [6, `BedwrightEighths-${weight}`],
    [13, "SIL Open Font License 1.1"],
  ].map(([id, text]) => ({ id, text: Buffer.from(text, "utf16le").swap16() }));
  const head = Buffer.alloc(6 + 12 * said.length);
  head.writeUInt16BE(said.length, 2);
  head.writeUInt16BE(head.length, 4);
  let offset = 0;
  said.forEach(({ id, text }, i) => {
    writeWords(head, 6 + 12 * i, [3, 1, 0x409, id, text.length, offset]);
    offset += text.length;
  });
  return Buffer.concat([head, ...said.map(({ text }) => text)]);
}

function joined(tables) {
  const power = 2 ** Math.floor(Math.log2(tables.length));
  const directory = Buffer.alloc(12 + 16 * tables.length);
  directory.writeUInt32BE(0x00010000, 0);
  writeWords(directory, 4, [tables.length, 16 * power, Math.log2(power), 16 * (tables.length - power)]);
  let offset = directory.length;
  const bodies = tables.map(([tag, data], i) => {
    const body = Buffer.concat([data, Buffer.alloc((4 - (data.length % 4)) % 4)]);
    directory.write(tag, 12 + 16 * i, "latin1");
    directory.writeUInt32BE(checksum(body), 16 + 16 * i);
    directory.writeUInt32BE(offset, 20 + 16 * i);
    directory.writeUInt32BE(data.length, 24 + 16 * i);
    offset += body.length;
    return body;
  });
  const file = Buffer.concat([directory, ...bodies]);
  const headAt = directory.readUInt32BE(20 + 16 * tables.findIndex(([tag]) => tag === "head"));
  file.writeUInt32BE((0xb1b0afba - checksum(file)) >>> 0, headAt + 8);
  return file;
}

/** Unsigned 16-bit words one after another. */
function writeWords(buffer, at, values) {
  for (const [i, value] of values.entries()) buffer.writeUInt16BE(value, at + 2 * i);
}

function checksum(data) {
  let sum = 0;
  for (let i = 0; i < data.length; i += 4) sum = (sum + data.readUInt32BE(i)) >>> 0;
  return sum;
}
