import { type RefObject, useEffect } from "react";
import { usePlanSize } from "./plan-size.ts";

/** Keeps the plan's size and its pixel ratio measured, through every resize, zoom of the page and change of screen. */
export function useMeasuredSize(element: RefObject<HTMLElement | null>): void {
  useEffect(() => {
    const measured = element.current;
    if (!measured) return;
    const measure = () => {
      const { clientWidth: width, clientHeight: height } = measured;
      const ratio = window.devicePixelRatio || 1;
      const was = usePlanSize.getState();
      if (was.width !== width || was.height !== height || was.ratio !== ratio) {
        usePlanSize.setState({ width, height, ratio });
      }
    };
    measure();
    const sizes = new ResizeObserver(measure);
    sizes.observe(measured);
    // A move to a finer screen changes no size, but zooming the page always ends in a resize of the window.
    window.addEventListener("resize", measure);
    const stop = watchRatio(measure);
    return () => {
      sizes.disconnect();
      window.removeEventListener("resize", measure);
      stop();
    };
  }, [element]);
}

/** A media query holds for one ratio only, so each change sets the next one up. */
function watchRatio(changed: () => void): () => void {
  let query: MediaQueryList | null = null;
  const next = () => {
    query?.removeEventListener("change", next);
    query = window.matchMedia(`(resolution: ${window.devicePixelRatio}dppx)`);
    query.addEventListener("change", next);
    changed();
  };
  next();
  return () => query?.removeEventListener("change", next);
}
