import { useId } from "react";
import { formatMoney, say, type WayOut } from "../../../src/index.ts";
import { useEditor } from "../../store/use-editor.ts";
import { useWayOutCost } from "./way-out-cost.ts";
import type { WayOutHands } from "./way-out-hands.ts";

interface Props extends WayOutHands {
  readonly way: WayOut;
}

/**
 * A remedy: shown on the plan while it is pointed at or focused, taken when pressed. What it costs or saves stands
 * beside it as soon as that is known.
 */
export function WayOutButton({ way, onTry, onPoint, onLeave, onTake }: Props) {
  const id = useId();
  const currency = useEditor((s) => s.garden.prices.currency);
  const cost = useWayOutCost(way);
  return (
    <span className="way-out">
      <button
        type="button"
        className="button"
        aria-describedby={cost === null ? undefined : id}
        onPointerEnter={(event) => event.pointerType === "mouse" && onPoint(way, event)}
        onPointerLeave={onLeave}
        onFocus={(event) => event.currentTarget.matches(":focus-visible") && onTry(way)}
        onBlur={onLeave}
        onClick={() => onTake(way)}
      >
        {way.label}
      </button>
      {cost === null ? null : <small id={id}>{costWords(cost, currency)}</small>}
    </span>
  );
}

/** Whole units say enough, but for what is less than one. */
export function costWords(cost: number, currency: string): string {
  const amount = formatMoney(Math.abs(cost), currency, Math.abs(cost) < 10);
  return cost > 0 ? say`costs ${amount}` : say`saves ${amount}`;
}
