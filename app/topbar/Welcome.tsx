import { useState } from "react";
import { isFirstVisit, rememberVisit } from "./first-visit.ts";

/** The one sentence a first visit is met with. */
export function Welcome() {
  const [shown, setShown] = useState(isFirstVisit);
  if (!shown) return null;
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
