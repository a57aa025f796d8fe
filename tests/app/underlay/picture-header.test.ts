import { describe, expect, it } from "vitest";
import { pictureHeader } from "../../../app/underlay/picture-header.ts";
import { seeded } from "../../helpers/scenes.ts";
import { JPEG, PNG, WEBP_LOSSLESS, WEBP_LOSSY, WEBP_WITH_PARTS } from "./picture-files.ts";

describe("what a picture file says of itself", () => {
  it.each([
    ["PNG", PNG, { type: "image/png", width: 640, height: 48 }],
    [
      "JPEG, after camera data with a small picture in it",
      JPEG,
      { type: "image/jpeg", width: 640, height: 48 },
    ],
    ["lossy WebP", WEBP_LOSSY, { type: "image/webp", width: 640, height: 48 }],
    ["lossless WebP", WEBP_LOSSLESS, { type: "image/webp", width: 640, height: 48 }],
    ["WebP of several parts", WEBP_WITH_PARTS, { type: "image/webp", width: 640, height: 48 }],
  ])("is read of %s", (_name, bytes, header) => {
    expect(pictureHeader(bytes)).toEqual(header);
  });

  it("is nothing for anything else, whatever it is called", () => {
    const texts = [
      "",
      "GIF89a\u0001\u0000",
      "%PDF-1.7",
      "<svg width='9' height='9'/>",
      '{"format":"bedwright-garden"}',
    ];
    for (const text of texts) expect(pictureHeader(new TextEncoder().encode(text))).toBeNull();
    const noWidth = PNG.slice();
    noWidth.fill(0, 16, 20);
    expect(pictureHeader(noWidth)).toBeNull();
  });

  it("comes back from any broken file, and at once", () => {
    const files = [PNG, JPEG, WEBP_LOSSY, WEBP_LOSSLESS, WEBP_WITH_PARTS];
    const start = performance.now();
    for (let n = 0; n < 5000; n++) {
      const chance = seeded(n + 1);
      const bytes = files[n % files.length]!.slice(0, Math.floor(chance() * 120));
      for (let i = 0; i < 3; i++) bytes[Math.floor(chance() * bytes.length)] = Math.floor(chance() * 256);
      const header = pictureHeader(bytes);
      if (header) expect(header.width * header.height).toBeGreaterThan(0);
    }
    expect(performance.now() - start).toBeLessThan(2000);
  });
});
