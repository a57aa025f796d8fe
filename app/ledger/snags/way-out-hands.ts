import type { PointerEvent } from "react";
import type { WayOut } from "../../../src/index.ts";

/** What pointing at, leaving and pressing a way out's button does. */
export interface WayOutHands {
  /** The keyboard is on a way out. */
  readonly onTry: (way: WayOut) => void;
  /** The mouse has come upon one. */
  readonly onPoint: (way: WayOut, event: PointerEvent) => void;
  readonly onLeave: () => void;
  readonly onTake: (way: WayOut) => void;
}
