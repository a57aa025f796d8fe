import { formatMoney, formatShare, say, type Takeoff } from "../../src/index.ts";

interface Props {
  readonly takeoff: Takeoff;
  /** Whether the cut plans in it may still turn out cheaper. */
  readonly proof: "proving" | "settled";
}

/** What the garden costs, and how much of it is fill. */
export const Money = ({ takeoff, proof }: Props) => (
  <p className="summary-part" data-proof={proof}>
    <strong>{formatMoney(takeoff.total, takeoff.currency, false)}</strong>
    <span>
      {takeoff.total > 0 ? say`fill is ${formatShare(takeoff.fillShare)} of it` : say`nothing to buy yet`}
    </span>
  </p>
);
