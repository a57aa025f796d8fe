export interface PictureHeader {
  readonly type: "image/png" | "image/jpeg" | "image/webp";
  readonly width: number;
  readonly height: number;
}

/**
 * What a picture file says of itself in its first bytes, so that it is known for what it is, and how large it will be in
 * memory, before anything decodes it. Its name and the type a page was told say nothing.
 *
 * @returns null for anything but a PNG, JPEG or WebP with a width and a height
 * @source PNG, third edition, 11.2.1 (IHDR); ITU-T T.81, B.2.2 (frame header); RFC 9649, sections 2.3 to 2.7 (WebP)
 */
export function pictureHeader(bytes: Uint8Array): PictureHeader | null {
  const header = pngHeader(bytes) ?? jpegHeader(bytes) ?? webpHeader(bytes);
  return header && header.width > 0 && header.height > 0 ? header : null;
}

const view = (bytes: Uint8Array) => new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
const lettersAt = (bytes: Uint8Array, at: number, length: number): string =>
  String.fromCharCode(...bytes.subarray(at, at + length));

function pngHeader(bytes: Uint8Array): PictureHeader | null {
  if (bytes.length < 24 || lettersAt(bytes, 0, 8) !== "\u0089PNG\r\n\u001A\n") return null;
  if (lettersAt(bytes, 12, 4) !== "IHDR") return null;
  return { type: "image/png", width: view(bytes).getUint32(16), height: view(bytes).getUint32(20) };
}

/** Frame headers have the markers C0 to CF, less those of tables (C4), extensions (C8) and conditioning (CC). */
const isFrame = (marker: number): boolean =>
  marker >= 0xc0 && marker <= 0xcf && marker !== 0xc4 && marker !== 0xc8 && marker !== 0xcc;

/** The frame header comes after segments of any number, camera data and a small picture among them. */
function jpegHeader(bytes: Uint8Array): PictureHeader | null {
  if (bytes.length < 4 || bytes[0] !== 0xff || bytes[1] !== 0xd8) return null;
  const data = view(bytes);
  let at = 2;
  while (at + 9 <= bytes.length) {
    if (bytes[at] !== 0xff) return null;
    const marker = bytes[at + 1]!;
    // Any number of FF may come before a marker.
    if (marker === 0xff) {
      at++;
      continue;
    }
    if (isFrame(marker)) {
      return { type: "image/jpeg", height: data.getUint16(at + 5), width: data.getUint16(at + 7) };
    }
    const length = data.getUint16(at + 2);
    if (length < 2) return null;
    at += 2 + length;
  }
  return null;
}

function webpHeader(bytes: Uint8Array): PictureHeader | null {
  if (bytes.length < 30 || lettersAt(bytes, 0, 4) !== "RIFF" || lettersAt(bytes, 8, 4) !== "WEBP")
    return null;
  const data = view(bytes);
  const uint24 = (at: number) => data.getUint16(at, true) | (bytes[at + 2]! << 16);
  switch (lettersAt(bytes, 12, 4)) {
    case "VP8X":
      return { type: "image/webp", width: 1 + uint24(24), height: 1 + uint24(27) };
    case "VP8L": {
      const bits = data.getUint32(21, true);
      return { type: "image/webp", width: 1 + (bits & 0x3fff), height: 1 + ((bits >>> 14) & 0x3fff) };
    }
    case "VP8 ":
      return {
        type: "image/webp",
        width: data.getUint16(26, true) & 0x3fff,
        height: data.getUint16(28, true) & 0x3fff,
      };
    default:
      return null;
  }
}
