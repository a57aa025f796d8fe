/*
 * The first bytes of picture files of 640 by 48, written down by their specifications: PNG, third edition, 11.2.1; ITU-T
 * T.81, B.2; RFC 9649, sections 2.5 (VP8, whose frame header is that of RFC 6386, 9.1), 2.6 (VP8L, 3.4) and 2.7 (VP8X).
 */
type Bytes = Uint8Array<ArrayBuffer>;

const of = (...parts: (string | readonly number[])[]): Bytes =>
  Uint8Array.from(
    parts.flatMap((part) =>
      typeof part === "string" ? [...part].map((letter) => letter.charCodeAt(0)) : part,
    ),
  );
const zeros = (count: number): number[] => new Array<number>(count).fill(0);

const [WIDTH, HEIGHT] = [640, 48];

export const PNG = of(
  [0x89],
  "PNG\r\n\u001A\n",
  [0, 0, 0, 13],
  "IHDR",
  [0, 0, WIDTH >> 8, WIDTH & 255],
  [0, 0, 0, HEIGHT],
  [8, 2, 0, 0, 0],
  zeros(4),
);

/** Camera data in which another whole picture stands: its frame header is not that of this one. */
export const JPEG = of(
  [0xff, 0xd8],
  [0xff, 0xe1, 0, 24],
  "Exif\u0000\u0000",
  [0xff, 0xd8, 0xff, 0xc0, 0, 17, 8, 0, 7, 0, 9, 3],
  zeros(4),
  // Huffman tables have a marker among those of frames.
  [0xff, 0xc4, 0, 5, 0, 0, 0],
  [0xff, 0xff, 0xc2, 0, 17, 8, 0, HEIGHT, WIDTH >> 8, WIDTH & 255, 3],
  zeros(9),
);

const riff = (...parts: (string | readonly number[])[]): Bytes =>
  of("RIFF", zeros(4), "WEBP", ...parts, zeros(8));

export const WEBP_LOSSY = riff(
  "VP8 ",
  zeros(4),
  [0, 0, 0, 0x9d, 0x01, 0x2a],
  [WIDTH & 255, WIDTH >> 8, HEIGHT, 0],
);

const bits = (WIDTH - 1) | ((HEIGHT - 1) << 14);
export const WEBP_LOSSLESS = riff(
  "VP8L",
  zeros(4),
  [0x2f],
  [bits & 255, (bits >> 8) & 255, (bits >> 16) & 255, (bits >> 24) & 255],
);

export const WEBP_WITH_PARTS = riff(
  "VP8X",
  zeros(4),
  zeros(4),
  [(WIDTH - 1) & 255, (WIDTH - 1) >> 8, 0],
  [HEIGHT - 1, 0, 0],
);
