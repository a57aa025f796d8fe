import { type PointerEvent, useEffect, useRef, useState } from "react";
import { type Garden, type Snag, say, type WayOut } from "../../../src/index.ts";
import { useFindings } from "../../live/findings.ts";
import { useEditor } from "../../store/use-editor.ts";
import { NothingYet } from "./NothingYet.tsx";
import { SnagEntry } from "./SnagEntry.tsx";
import { leaveOff, takeWayOut, tryOut } from "./way-out.ts";

/** The list as it stood when a way out began to be tried. */
interface Held {
  readonly garden: Garden;
  readonly snags: readonly Snag[];
  /** False once the way out has been left, until the findings are again those of the garden as it is. */
  readonly trying: boolean;
}

/** Everything wrong with the plan, most serious first. */
export function SnagsLeaf() {
  const findings = useFindings();
  const garden = useEditor((s) => s.garden);
  const isDragging = useEditor((s) => s.draft !== null);
  const activeSnag = useEditor((s) => s.activeSnag);
  const [held, setHeld] = useState<Held | null>(null);
  const [refusal, setRefusal] = useState<string | null>(null);
  const list = useRef<HTMLUListElement>(null);
  const spot = useRef<readonly [number, number] | null>(null);

  // While a way out is tried the plan and the figures above show what it would do. The list itself stays, or the
  // button would be gone from under the pointer, and the next one from under the keyboard.
  const cameBack = findings.of === garden && findings.settled;
  const holds = held?.garden === garden && (held.trying || (!isDragging && !cameBack));
  const snags = holds ? held.snags : findings.snags;
  useEffect(() => leaveOff, []);

  const onTry = (way: WayOut) => {
    // Findings of an older garden may speak of places that are no longer so.
    if (findings.of !== garden && held?.garden !== garden) return;
    setHeld({ garden, snags, trying: true });
    tryOut(way);
  };
  // A list that grows shorter slides another button under a pointer at rest; nobody has pointed at that.
  const noteSpot = ({ clientX, clientY }: PointerEvent) => {
    spot.current = [clientX, clientY];
  };
  const movedTo = ({ clientX, clientY }: PointerEvent) =>
    spot.current?.[0] !== clientX || spot.current[1] !== clientY;
  const onLeave = () => {
    leaveOff();
    setHeld((was) => was && { ...was, trying: false });
  };
  const onTake = (way: WayOut) => {
    const current = held?.garden === garden || findings.of === garden;
    const problem = current
      ? takeWayOut(way)
      : say`The plan has just changed: look again and take the way out that is offered now.`;
    setRefusal(problem);
    setHeld(null);
    // The button goes with its snag; the keyboard stays in the list.
    if (!problem) list.current?.focus();
  };

  const hasBeds = garden.items.some(({ kind }) => kind === "bed");
  if (findings.of === null) return <p className="leaf-text quiet">{say`Reckoning…`}</p>;
  return (
    <>
      {refusal ? (
        <p className="leaf-text field-problem" role="alert">
          {refusal}
        </p>
      ) : null}
      {hasBeds ? null : <NothingYet garden={garden} />}
      {hasBeds && snags.length === 0 ? <NothingWrong /> : null}
      <ul
        className="snags"
        ref={list}
        tabIndex={-1}
        aria-label={say`Snags, most serious first`}
        onPointerMove={noteSpot}
        onPointerDown={noteSpot}
      >
        {snags.map((snag) => (
          <SnagEntry
            key={snag.key}
            snag={snag}
            active={snag.key === activeSnag}
            onTry={onTry}
            onPoint={(way, event) => movedTo(event) && onTry(way)}
            onLeave={onLeave}
            onTake={onTake}
          />
        ))}
      </ul>
    </>
  );
}

const NothingWrong = () => (
  <div className="leaf-text">
    <h3>{say`Nothing wrong with this plan`}</h3>
    <p>{say`Every bed can be reached, got to and built as it is drawn. The build sheet is ready to be printed. Limits can be made stricter under Site.`}</p>
  </div>
);
