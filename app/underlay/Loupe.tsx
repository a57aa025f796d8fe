import { useEffect, useRef } from "react";
import { type Point, say } from "../../src/index.ts";
import { INK } from "../style/ink.ts";

interface Props {
  readonly image: ImageBitmap;
  readonly at: Point;
  readonly letter: string;
}

/** Dots of the loupe, and how often larger than the picture it shows. */
const SIZE = 216;
const TIMES = 4;

/** What lies round a point of the picture, four times as large, with a cross on the point itself. */
export function Loupe({ image, at: [x, y], letter }: Props) {
  const canvas = useRef<HTMLCanvasElement>(null);
  useEffect(() => {
    const context = canvas.current?.getContext("2d");
    if (!context) return;
    const half = SIZE / 2;
    context.fillStyle = INK.shade;
    context.fillRect(0, 0, SIZE, SIZE);
    context.imageSmoothingEnabled = false;
    context.drawImage(image, half - x * TIMES, half - y * TIMES, image.width * TIMES, image.height * TIMES);
    for (const [colour, width] of [
      [INK.paper, 5],
      [INK.accent, 2],
    ] as const) {
      context.strokeStyle = colour;
      context.lineWidth = width;
      context.beginPath();
      for (const [dx, dy] of [
        [1, 0],
        [-1, 0],
        [0, 1],
        [0, -1],
      ] as const) {
        context.moveTo(half + dx * 6, half + dy * 6);
        context.lineTo(half + dx * 40, half + dy * 40);
      }
      context.stroke();
    }
  }, [image, x, y]);
  return (
    <figure className="underlay-loupe">
      <canvas
        ref={canvas}
        width={SIZE}
        height={SIZE}
        role="img"
        aria-label={say`The picture round ${letter}, enlarged`}
      />
      <figcaption>{say`${letter}, four times as large`}</figcaption>
    </figure>
  );
}
