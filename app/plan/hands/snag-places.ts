import { useFindings } from "../../live/findings.ts";
import type { View } from "../../store/editor.ts";
import { snagMarkPlaces } from "../snag-marks.ts";
import type { SnagPlace } from "./hit-test.ts";

let known: {
  readonly of: unknown;
  readonly snags: unknown;
  readonly view: View;
  readonly places: readonly SnagPlace[];
};

/** Where the snags' marks stand; worked out anew only when the garden, its snags or the view have changed. */
export function snagPlacesOf(view: View): readonly SnagPlace[] {
  const { of, snags } = useFindings.getState();
  if (!of) return [];
  if (known?.of !== of || known.snags !== snags || known.view !== view) {
    known = { of, snags, view, places: snagMarkPlaces(of, snags, view) };
  }
  return known.places;
}
