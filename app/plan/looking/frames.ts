/** Gathers changes of the view and makes them once a frame. */
export function oncePerFrame(apply: () => void): { ask(): void; stop(): void } {
  let frame = 0;
  return {
    ask() {
      frame ||= requestAnimationFrame(() => {
        frame = 0;
        apply();
      });
    },
    stop: () => cancelAnimationFrame(frame),
  };
}
