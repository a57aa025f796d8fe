import { crc32, deflateSync, inflateSync } from "node:zlib";
import { describe, expect, it } from "vitest";
import { checkedDots, dotsOf, PictureError } from "../../../app/sharing/png.ts";
import { withDensity } from "../../../app/sharing/png-density.ts";

/** A chunk with its checksum by another's reckoning. Source: PNG, third edition, section 5.3. */
function chunk(type: string, data: Uint8Array): Buffer {
  const body = Buffer.concat([Buffer.from(type, "latin1"), data]);
  const ends = Buffer.alloc(8);
  ends.writeUInt32BE(data.length, 0);
  ends.writeUInt32BE(crc32(body), 4);
  return Buffer.concat([ends.subarray(0, 4), body, ends.subarray(4)]);
}

/** A PNG of one grey dot. */
function oneDot(): Uint8Array<ArrayBuffer> {
  const header = Buffer.from([0, 0, 0, 1, 0, 0, 0, 1, 8, 0, 0, 0, 0]);
  return new Uint8Array(
    Buffer.concat([
      Buffer.from([0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a]),
      chunk("IHDR", header),
      chunk("IDAT", deflateSync(Buffer.from([0, 77]))),
      chunk("IEND", Buffer.alloc(0)),
    ]),
  );
}

function chunksOf(png: Uint8Array): { type: string; data: Buffer; sound: boolean }[] {
  const bytes = Buffer.from(png);
  const found = [];
  for (let at = 8; at < bytes.length; ) {
    const length = bytes.readUInt32BE(at);
    const body = bytes.subarray(at + 4, at + 8 + length);
    const sound = crc32(body) === bytes.readUInt32BE(at + 8 + length);
    found.push({ type: body.toString("latin1", 0, 4), data: body.subarray(4), sound });
    at += 12 + length;
  }
  return found;
}

describe("the dots to the inch of a PNG", () => {
  it("stand in a chunk of their own before the picture, which stays as it is", () => {
    const chunks = chunksOf(withDensity(oneDot(), 300));
    expect(chunks.map(({ type }) => type)).toEqual(["IHDR", "pHYs", "IDAT", "IEND"]);
    expect(chunks.every(({ sound }) => sound)).toBe(true);
    const density = chunks[1]!.data;
    // 300 to the inch of 25.4 mm are 11,811 to the metre.
    expect([density.readUInt32BE(0), density.readUInt32BE(4), density[8]]).toEqual([11_811, 11_811, 1]);
    expect([...inflateSync(chunks[2]!.data)]).toEqual([0, 77]);
  });

  it("are refused to what is no PNG", () => {
    expect(() => withDensity(new Uint8Array(50), 96)).toThrow(RangeError);
    expect(() => withDensity(new Uint8Array(3), 96)).toThrow(RangeError);
  });
});

describe("the size of a picture", () => {
  it("is its inches times the dots to each", () => {
    expect(dotsOf({ widthMm: 254, heightMm: 127 }, 150)).toEqual([1500, 750]);
  });

  it("is held to what browsers draw, and what to do is said", () => {
    const sheet = { widthMm: 410, heightMm: 290 };
    expect(checkedDots(sheet, 150)).toEqual([2421, 1713]);
    expect(() => checkedDots(sheet, 300)).toThrow(PictureError);
    expect(() => checkedDots(sheet, 300)).toThrow(
      /4,843 by 3,425 dots.*Choose fewer dots, or save it as SVG/,
    );
  });
});
