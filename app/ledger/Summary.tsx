import { formatMoney, formatShare } from "../../src/index.ts";
import { useFindings } from "../live/findings.ts";
import { countSnags, lesser, toFix } from "./counts.ts";
import { useLedger } from "./ledger-state.ts";

/** What is always on top: how many to fix, and what it costs. */
export function Summary() {
  const reckoned = useFindings((s) => s.of !== null);
  const snags = useFindings((s) => s.snags);
  const takeoff = useFindings((s) => s.takeoff);
  const trying = useLedger((s) => s.trying);
  const counts = countSnags(snags);

  if (!reckoned) {
    return (
      <div className="summary">
        <p className="summary-part quiet">Reckoning…</p>
      </div>
    );
  }
  return (
    <div className="summary">
      <p className="summary-part" data-clear={counts.must === 0} data-trying={trying !== null}>
        <strong>{toFix(counts)}</strong>
        <span>{trying ? `with “${trying}”` : lesser(counts)}</span>
      </p>
      {takeoff ? (
        <p className="summary-part">
          <strong>{formatMoney(takeoff.total, takeoff.currency, false)}</strong>
          <span>
            {takeoff.total > 0 ? `fill is ${formatShare(takeoff.fillShare)} of it` : "nothing to buy yet"}
          </span>
        </p>
      ) : null}
    </div>
  );
}
