import { INK } from "../style/ink.ts";

interface Tile {
  /** Side in px. */
  readonly size: number;
  draw(ctx: CanvasRenderingContext2D, size: number): void;
}

/** One tile of each hatch, drawn to meet itself at its edges. */
export const TILES = {
  /** Filled beds: an even stipple. */
  soil: { size: 36, draw: (ctx, size) => stipple(ctx, size, 22, INK.soilMark, 0.75, 0.85) },
  /** Bare ground: a sparse stipple. */
  earth: { size: 48, draw: (ctx, size) => stipple(ctx, size, 12, INK.soilMark, 0.8, 0.75) },
  lawn: { size: 48, draw: (ctx, size) => tufts(ctx, size, 9, 2, 0.5) },
  weeds: { size: 40, draw: (ctx, size) => tufts(ctx, size, 8, 3, 0.75) },
  bark: { size: 56, draw: (ctx, size) => chips(ctx, size, 25) },
  "loose-gravel": { size: 40, draw: (ctx, size) => pebbles(ctx, size, 18) },
  "firm-gravel": { size: 32, draw: (ctx, size) => stipple(ctx, size, 34, INK.faint, 0.7, 0.7) },
  /** Aggregate: the dots and broken triangles that stand for concrete. */
  paving: { size: 80, draw: (ctx, size) => aggregate(ctx, size) },
  deck: { size: 10, draw: (ctx, size) => level(ctx, size, INK.faint, 0.75) },
  roof: { size: 14, draw: (ctx, size) => diagonals(ctx, size, INK.faint, 0.6, true) },
  building: { size: 9, draw: (ctx, size) => diagonals(ctx, size, INK.faint, 0.6) },
  shed: { size: 7, draw: (ctx, size) => diagonals(ctx, size, INK.faint, 0.55) },
  "out-of-reach": { size: 8, draw: (ctx, size) => diagonals(ctx, size, INK.accent, 1.5) },
} as const satisfies Record<string, Tile>;

export type HatchName = keyof typeof TILES;

/**
 * The i-th place of an even scatter, 0..1 each way.
 * @source M. Roberts, "The unreasonable effectiveness of quasirandom sequences", 2018: steps of 1/g and 1/g² for
 *   the plastic number g
 */
const scatter = (i: number): readonly [number, number] => [
  (0.5 + i * 0.7548776662) % 1,
  (0.5 + i * 0.569840291) % 1,
];

/** Turns that do not follow the places of the scatter, 0..1: marks in a row would else look grown, not strewn. */
const tumbled = (i: number): number => ((i * 7919 + 13) % 97) / 97;

/** Draws each mark again where it runs over an edge, so that tiles meet. */
function scattered(size: number, count: number, draw: (x: number, y: number, i: number) => void): void {
  for (let i = 0; i < count; i++) {
    const [u, v] = scatter(i);
    for (const dx of [-size, 0, size])
      for (const dy of [-size, 0, size]) draw(u * size + dx, v * size + dy, i);
  }
}

function stipple(
  ctx: CanvasRenderingContext2D,
  size: number,
  count: number,
  colour: string,
  radius: number,
  strength: number,
): void {
  ctx.fillStyle = colour;
  ctx.globalAlpha = strength;
  scattered(size, count, (x, y, i) => {
    ctx.beginPath();
    ctx.arc(x, y, radius * (i % 3 === 0 ? 1.25 : 1), 0, 2 * Math.PI);
    ctx.fill();
  });
}

function tufts(
  ctx: CanvasRenderingContext2D,
  size: number,
  count: number,
  blades: number,
  strength: number,
): void {
  ctx.strokeStyle = INK.leaf;
  ctx.lineWidth = 0.8;
  ctx.lineCap = "round";
  ctx.globalAlpha = strength;
  scattered(size, count, (x, y, i) => {
    ctx.beginPath();
    for (let blade = 0; blade < blades; blade++) {
      const lean = (blade - (blades - 1) / 2) * 2.2 + ((i % 3) - 1) * 0.5;
      ctx.moveTo(x + lean * 0.25, y);
      ctx.lineTo(x + lean, y - 4 - (i % 2));
    }
    ctx.stroke();
  });
}

function chips(ctx: CanvasRenderingContext2D, size: number, count: number): void {
  ctx.strokeStyle = INK.soilMark;
  ctx.lineWidth = 1;
  ctx.lineCap = "round";
  scattered(size, count, (x, y, i) => {
    const angle = tumbled(i) * Math.PI;
    const half = 1.8 + 1.1 * tumbled(i + 31);
    const [dx, dy] = [Math.cos(angle) * half, Math.sin(angle) * half];
    ctx.beginPath();
    ctx.moveTo(x - dx, y - dy);
    ctx.lineTo(x + dx, y + dy);
    ctx.stroke();
  });
}

function pebbles(ctx: CanvasRenderingContext2D, size: number, count: number): void {
  ctx.strokeStyle = INK.faint;
  ctx.lineWidth = 0.7;
  ctx.globalAlpha = 0.8;
  scattered(size, count, (x, y, i) => {
    ctx.beginPath();
    ctx.ellipse(x, y, 1.5 + (i % 3) * 0.4, 1.2, tumbled(i) * Math.PI, 0, 2 * Math.PI);
    ctx.stroke();
  });
}

function aggregate(ctx: CanvasRenderingContext2D, size: number): void {
  stipple(ctx, size, 40, INK.faint, 0.6, 0.6);
  ctx.strokeStyle = INK.faint;
  ctx.lineWidth = 0.7;
  ctx.globalAlpha = 0.75;
  scattered(size, 8, (x, y, i) => {
    const r = 2.2 + 1.1 * tumbled(i);
    ctx.beginPath();
    for (let corner = 0; corner < 3; corner++) {
      const angle = tumbled(i + 7) * 6 + (corner * 2 * Math.PI) / 3;
      ctx.lineTo(x + 7 + r * Math.cos(angle), y + 4 + r * Math.sin(angle));
    }
    ctx.closePath();
    ctx.stroke();
  });
}

function level(ctx: CanvasRenderingContext2D, size: number, colour: string, width: number): void {
  ctx.fillStyle = colour;
  ctx.globalAlpha = 0.6;
  ctx.fillRect(0, 0, size, width);
}

function diagonals(
  ctx: CanvasRenderingContext2D,
  size: number,
  colour: string,
  width: number,
  crossed = false,
): void {
  ctx.strokeStyle = colour;
  ctx.lineWidth = width;
  ctx.beginPath();
  for (const by of [-size, 0, size]) {
    ctx.moveTo(by - 1, size + 1);
    ctx.lineTo(by + size + 1, -1);
    if (!crossed) continue;
    ctx.moveTo(by - 1, -1);
    ctx.lineTo(by + size + 1, size + 1);
  }
  ctx.stroke();
}
