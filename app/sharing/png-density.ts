/** A chunk of a PNG: 4 bytes of length, 4 letters, the data, 4 bytes of checksum. */
const SIGNATURE = 8;
const HEADER_CHUNK = 4 + 4 + 13 + 4;
const METRE = 1;

/**
 * Writes into a PNG how many dots go to the inch, so that programs that print it print it true to scale.
 *
 * @param png as a canvas makes them: its second chunk is not yet a "pHYs"
 * @throws RangeError for what is no PNG
 * @source PNG, third edition, sections 5.3 (chunks), 11.3.4.3 (pHYs) and annex D (the checksum)
 */
export function withDensity(png: Uint8Array<ArrayBuffer>, dotsPerInch: number): Uint8Array<ArrayBuffer> {
  if (png.length < SIGNATURE + HEADER_CHUNK || png[1] !== 0x50 || png[2] !== 0x4e || png[3] !== 0x47) {
    throw new RangeError("not a PNG");
  }
  const chunk = new Uint8Array(4 + 4 + 9 + 4);
  const view = new DataView(chunk.buffer);
  const perMetre = Math.round(dotsPerInch / 0.0254);
  view.setUint32(0, 9);
  chunk.set(new TextEncoder().encode("pHYs"), 4);
  view.setUint32(8, perMetre);
  view.setUint32(12, perMetre);
  chunk[16] = METRE;
  view.setUint32(17, checksum(chunk.subarray(4, 17)));

  const at = SIGNATURE + HEADER_CHUNK;
  const all = new Uint8Array(png.length + chunk.length);
  all.set(png.subarray(0, at));
  all.set(chunk, at);
  all.set(png.subarray(at), at + chunk.length);
  return all;
}

const POLYNOMIAL = 0xedb88320;

function checksum(bytes: Uint8Array): number {
  let sum = 0xffffffff;
  for (const byte of bytes) {
    sum ^= byte;
    for (let bit = 0; bit < 8; bit++) sum = sum & 1 ? (sum >>> 1) ^ POLYNOMIAL : sum >>> 1;
  }
  return (sum ^ 0xffffffff) >>> 0;
}
