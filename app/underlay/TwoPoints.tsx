import { type KeyboardEvent, type PointerEvent, useEffect, useRef, useState } from "react";
import { add, distance, type Point, say, subtract, type Underlay } from "../../src/index.ts";
import { Loupe } from "./Loupe.tsx";

interface Props {
  readonly image: ImageBitmap;
  readonly pixels: Underlay["pixels"];
  readonly points: readonly [Point, Point];
  readonly onMove: (which: 0 | 1, at: Point) => void;
}

const LETTERS = ["A", "B"] as const;
const ARROWS: Readonly<Record<string, Point>> = {
  ArrowLeft: [-1, 0],
  ArrowRight: [1, 0],
  ArrowUp: [0, -1],
  ArrowDown: [0, 1],
};
const COARSE = 10;
/** A press this near to a point takes hold of it, px of the page. */
const GRIP = 18;

/**
 * The picture with two points on it. A tap sets the one whose turn it is, a drag moves it under the loupe, and with a
 * point's letter in focus the arrow keys move it by a pixel, with Shift by ten.
 */
export function TwoPoints({ image, pixels, points, onMove }: Props) {
  const [active, setActive] = useState<0 | 1>(0);
  const held = useRef<{ readonly which: 0 | 1; readonly off: Point } | null>(null);
  const [width, height] = pixels;

  const within = ([x, y]: Point): Point => [
    Math.round(Math.min(width, Math.max(0, x)) * 10) / 10,
    Math.round(Math.min(height, Math.max(0, y)) * 10) / 10,
  ];
  const pointAt = (event: PointerEvent<HTMLElement>): Point => {
    const box = event.currentTarget.getBoundingClientRect();
    return within([
      ((event.clientX - box.left) / box.width) * width,
      ((event.clientY - box.top) / box.height) * height,
    ]);
  };

  const onPointerDown = (event: PointerEvent<HTMLDivElement>) => {
    if (event.button !== 0) return;
    event.currentTarget.setPointerCapture(event.pointerId);
    const at = pointAt(event);
    const near = (GRIP * width) / event.currentTarget.getBoundingClientRect().width;
    const grabbed = ([0, 1] as const).find((which) => distance(points[which], at) <= near);
    const which = grabbed ?? active;
    // One that is grabbed keeps its distance from the finger, and does not jump under it.
    held.current = { which, off: grabbed === undefined ? [0, 0] : subtract(points[which], at) };
    setActive(which);
    if (grabbed === undefined) onMove(which, at);
  };
  const onPointerMove = (event: PointerEvent<HTMLDivElement>) => {
    if (held.current) onMove(held.current.which, within(add(pointAt(event), held.current.off)));
  };
  const onPointerUp = () => {
    // A first, then B, then A again.
    if (held.current) setActive(held.current.which === 0 ? 1 : 0);
    held.current = null;
  };
  const onKeyDown = (event: KeyboardEvent, which: 0 | 1) => {
    const by = ARROWS[event.key];
    if (!by) return;
    event.preventDefault();
    const far = event.shiftKey ? COARSE : 1;
    const [x, y] = points[which];
    onMove(which, within([x + by[0] * far, y + by[1] * far]));
  };

  return (
    <div className="two-points">
      <div
        className="underlay-sheet"
        style={{ aspectRatio: `${width} / ${height}`, maxWidth: `${(22 * width) / height}rem` }}
      >
        <Picture image={image} />
        <svg viewBox={`0 0 ${width} ${height}`} aria-hidden="true" preserveAspectRatio="none">
          <line
            x1={points[0][0]}
            y1={points[0][1]}
            x2={points[1][0]}
            y2={points[1][1]}
            vectorEffect="non-scaling-stroke"
          />
        </svg>
        <div
          className="underlay-taps"
          onPointerDown={onPointerDown}
          onPointerMove={onPointerMove}
          onPointerUp={onPointerUp}
          onPointerCancel={() => {
            held.current = null;
          }}
        />
        {LETTERS.map((letter, i) => {
          const which = i === 0 ? 0 : 1;
          const [x, y] = points[which];
          return (
            <button
              key={letter}
              type="button"
              className="underlay-point"
              data-active={active === which}
              aria-pressed={active === which}
              aria-label={say`Point ${letter}, ${Math.round(x)} from the left, ${Math.round(y)} from the top. Arrow keys move it.`}
              style={{ left: `${(100 * x) / width}%`, top: `${(100 * y) / height}%` }}
              onFocus={() => setActive(which)}
              onClick={() => setActive(which)}
              onKeyDown={(event) => onKeyDown(event, which)}
            >
              <span aria-hidden="true">{letter}</span>
            </button>
          );
        })}
      </div>
      <Loupe image={image} at={points[active]} letter={LETTERS[active]} />
    </div>
  );
}

/** As many dots as the dialog is wide on a sharp screen; the loupe shows the picture's own. */
const MOST_DOTS = 1400;

function Picture({ image }: { readonly image: ImageBitmap }) {
  const canvas = useRef<HTMLCanvasElement>(null);
  const scale = Math.min(1, MOST_DOTS / Math.max(image.width, image.height));
  const [width, height] = [Math.round(image.width * scale), Math.round(image.height * scale)];
  useEffect(() => {
    const context = canvas.current?.getContext("2d");
    if (!context) return;
    context.imageSmoothingQuality = "high";
    context.drawImage(image, 0, 0, width, height);
  }, [image, width, height]);
  return <canvas ref={canvas} width={width} height={height} role="img" aria-label={say`The picture`} />;
}
