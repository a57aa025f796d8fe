import type { WayOut } from "../../../src/index.ts";
import type { WayOutHands } from "./way-out-hands.ts";

interface Props extends WayOutHands {
  readonly way: WayOut;
}

/** A remedy: shown on the plan while it is pointed at or focused, taken when pressed. */
export const WayOutButton = ({ way, onTry, onPoint, onLeave, onTake }: Props) => (
  <button
    type="button"
    className="button"
    onPointerEnter={(event) => event.pointerType === "mouse" && onPoint(way, event)}
    onPointerLeave={onLeave}
    onFocus={(event) => event.currentTarget.matches(":focus-visible") && onTry(way)}
    onBlur={onLeave}
    onClick={() => onTake(way)}
  >
    {way.label}
  </button>
);
