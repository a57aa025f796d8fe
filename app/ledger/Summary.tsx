import { lazy, Suspense } from "react";
import { say } from "../../src/index.ts";
import { useFindings } from "../live/findings.ts";
import { countSnags, lesser, toFix } from "./counts.ts";
import { useLedger } from "./ledger-state.ts";
import { Money } from "./Money.tsx";

// The proof of cut plans comes with the engine, after the first sight of the page.
const ProvenMoney = lazy(async () => ({ default: (await import("./ProvenMoney.tsx")).ProvenMoney }));

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
        <p className="summary-part quiet">
          <strong>{say`Reckoning…`}</strong>
          <span>{say`what is to fix, and what it costs`}</span>
        </p>
      </div>
    );
  }
  return (
    <div className="summary">
      <p className="summary-part" data-clear={counts.must === 0} data-trying={trying !== null}>
        <strong>{toFix(counts)}</strong>
        <span>{trying ? say`with “${trying}”` : lesser(counts)}</span>
      </p>
      {takeoff ? (
        <Suspense fallback={<Money takeoff={takeoff} proof="proving" />}>
          <ProvenMoney takeoff={takeoff} />
        </Suspense>
      ) : null}
    </div>
  );
}
