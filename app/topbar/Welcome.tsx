import { useState } from "react";
import { useFindings } from "../live/findings.ts";
import { isFirstVisit, rememberVisit } from "./first-visit.ts";

/** The one sentence a first visit is met with; it has nothing to say once there is nothing to fix. */
export function Welcome() {
  const [shown, setShown] = useState(isFirstVisit);
  const cleared = useFindings((s) => s.of !== null && s.snags.every(({ grade }) => grade !== "must"));
  if (!shown || cleared) return null;
  const dismiss = () => {
    rememberVisit();
    setShown(false);
  };
  return (
    <p className="welcome">
      Drag the beds until nothing is left to fix.
      <button type="button" className="button" onClick={dismiss} aria-label="Dismiss this hint">
        Got it
      </button>
    </p>
  );
}
