/**
 * A 2D context that draws nothing, so that a Konva stage can stand in a test DOM. Component tests read the DOM;
 * what is drawn is tested in a real browser.
 */
const nothing = () => undefined;

const known = (canvas: HTMLCanvasElement): Record<string, unknown> => ({
  canvas,
  getLineDash: () => [],
  createPattern: () => ({}),
  measureText: (text: string) => ({
    width: text.length * 6,
    actualBoundingBoxAscent: 8,
    actualBoundingBoxDescent: 2,
    fontBoundingBoxAscent: 8,
    fontBoundingBoxDescent: 2,
  }),
  getImageData: (_x: number, _y: number, w: number, h: number) => ({
    data: new Uint8ClampedArray(w * h * 4),
    width: w,
    height: h,
  }),
  createLinearGradient: () => ({ addColorStop: nothing }),
});

const contexts = new WeakMap<HTMLCanvasElement, unknown>();

HTMLCanvasElement.prototype.getContext = function getContext(this: HTMLCanvasElement, type: string) {
  if (type !== "2d") return null;
  if (!contexts.has(this)) {
    const context = new Proxy(known(this), {
      get: (target, key: string) => (key in target ? target[key] : nothing),
      set: (target, key: string, value: unknown) => {
        target[key] = value;
        return true;
      },
    });
    contexts.set(this, context);
  }
  return contexts.get(this);
} as HTMLCanvasElement["getContext"];
