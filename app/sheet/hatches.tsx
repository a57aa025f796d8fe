import { HATCH_TILES, type Hatch } from "../../src/index.ts";

export const hatchId = (hatch: Hatch): string => `on-paper-${hatch}`;

export const HATCHES = HATCH_TILES.map(({ hatch, size, turn, stroke }) => (
  <pattern
    key={hatch}
    id={hatchId(hatch)}
    width={size}
    height={size}
    patternUnits="userSpaceOnUse"
    patternTransform={turn ? `rotate(${turn})` : undefined}
  >
    <rect width={size} height={size} fill="#fff" />
    <path d={stroke.path} stroke={stroke.colour} strokeWidth={stroke.width} fill="none" />
  </pattern>
));
