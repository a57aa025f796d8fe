import { useState } from "react";
import { say, told, word } from "../../src/index.ts";
import { useFindings } from "../live/findings.ts";
import { useEditor } from "../store/use-editor.ts";
import { isFirstVisit, rememberVisit } from "./first-visit.ts";

/**
 * The one sentence a first visit is met with: what to do next. It keeps its place until it is dismissed, or the plan
 * under it would jump while the bed is dragged that clears the last snag.
 */
export function Welcome() {
  const [shown, setShown] = useState(isFirstVisit);
  const hasBeds = useEditor((s) => s.garden.items.some(({ kind }) => kind === "bed"));
  const cleared = useFindings((s) => s.of !== null && s.snags.every(({ grade }) => grade !== "must"));
  if (!shown) return null;
  const dismiss = () => {
    rememberVisit();
    setShown(false);
  };
  return (
    <p className="welcome">
      {told(hasBeds ? (cleared ? CLEARED : TO_CLEAR) : TO_BEGIN)}
      <button
        type="button"
        className="button"
        onClick={dismiss}
        aria-label={say`Got it: dismiss this hint`}
      >{say`Got it`}</button>
    </p>
  );
}

const TO_BEGIN = word("Drag a bed out of the barrow to begin.");
const TO_CLEAR = word("Drag the beds until nothing is left to fix.");
const CLEARED = word("Nothing is left to fix: press Build sheet.");
