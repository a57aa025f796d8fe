import { readFileSync } from "node:fs";
import { inflateSync } from "node:zlib";

/**
 * The tables of a WOFF file (W3C Recommendation "WOFF File Format 1.0", section 4) or of a plain TrueType file, by tag.
 * @param {string | URL} path
 * @returns {Map<string, Buffer>}
 */
export function fontTables(path) {
  const file = readFileSync(path);
  const isWoff = file.toString("latin1", 0, 4) === "wOFF";
  const count = isWoff ? file.readUInt16BE(12) : file.readUInt16BE(4);
  const tables = new Map();
  for (let i = 0; i < count; i++) {
    const at = isWoff ? 44 + 20 * i : 12 + 16 * i;
    const tag = file.toString("latin1", at, at + 4);
    if (isWoff) {
      const [offset, packed, size] = [4, 8, 12].map((step) => file.readUInt32BE(at + step));
      const data = file.subarray(offset, offset + packed);
      tables.set(tag, packed < size ? inflateSync(data) : data);
    } else {
      const [offset, size] = [8, 12].map((step) => file.readUInt32BE(at + step));
      tables.set(tag, file.subarray(offset, offset + size));
    }
  }
  return tables;
}

/**
 * Glyph of a character by the font's format 4 character map (OpenType specification, "cmap"); 0 where it has none.
 * @param {Buffer} cmap
 * @param {number} code
 * @returns {number}
 */
export function glyphOf(cmap, code) {
  for (let i = 0; i < cmap.readUInt16BE(2); i++) {
    const map = cmap.subarray(cmap.readUInt32BE(4 + 8 * i + 4));
    if (map.readUInt16BE(0) !== 4) continue;
    const doubled = map.readUInt16BE(6);
    for (let segment = 0; segment < doubled; segment += 2) {
      const end = map.readUInt16BE(14 + segment);
      const start = map.readUInt16BE(16 + doubled + segment);
      if (code < start || code > end) continue;
      const delta = map.readUInt16BE(16 + 2 * doubled + segment);
      const rangeAt = 16 + 3 * doubled + segment;
      const range = map.readUInt16BE(rangeAt);
      if (range === 0) return (code + delta) & 0xffff;
      const glyph = map.readUInt16BE(rangeAt + range + 2 * (code - start));
      return glyph === 0 ? 0 : (glyph + delta) & 0xffff;
    }
  }
  return 0;
}

/**
 * Advance width of a glyph, font units.
 * @param {Map<string, Buffer>} tables
 * @param {number} glyph
 * @returns {number}
 */
export function advanceOf(tables, glyph) {
  const last = tables.get("hhea").readUInt16BE(34) - 1;
  return tables.get("hmtx").readUInt16BE(4 * Math.min(glyph, last));
}

/**
 * The outline of a glyph as the file holds it.
 * @param {Map<string, Buffer>} tables
 * @param {number} glyph
 * @returns {Buffer}
 */
export function outlineOf(tables, glyph) {
  const loca = tables.get("loca");
  const long = tables.get("head").readInt16BE(50) === 1;
  const [from, to] = [glyph, glyph + 1].map((g) =>
    long ? loca.readUInt32BE(4 * g) : 2 * loca.readUInt16BE(2 * g),
  );
  return tables.get("glyf").subarray(from, to);
}

/**
 * What a glyph is put together of (OpenType specification, "glyf", composite glyphs); nothing for a simple one.
 * @param {Buffer} outline
 * @returns {{ glyph: number, x: number, y: number }[]}
 */
export function partsOf(outline) {
  const parts = [];
  if (outline.readInt16BE(0) >= 0) return parts;
  let at = 10;
  for (let more = true; more; ) {
    const flags = outline.readUInt16BE(at);
    const glyph = outline.readUInt16BE(at + 2);
    at += 4;
    const words = (flags & 1) !== 0;
    parts.push({
      glyph,
      x: words ? outline.readInt16BE(at) : outline.readInt8(at),
      y: words ? outline.readInt16BE(at + 2) : outline.readInt8(at + 1),
    });
    if (flags & 0xc8) throw new RangeError("a part is scaled: this reader knows only parts that are moved");
    at += words ? 4 : 2;
    more = (flags & 0x20) !== 0;
  }
  return parts;
}
