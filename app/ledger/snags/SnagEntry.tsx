import { useEffect, useRef } from "react";
import type { Snag } from "../../../src/index.ts";
import { useEditor } from "../../store/use-editor.ts";
import { GradeMark, gradeWords } from "../GradeMark.tsx";
import { ShiftToClear } from "./ShiftToClear.tsx";
import { SourceLine } from "./SourceLine.tsx";
import { WayOutButton } from "./WayOutButton.tsx";
import type { WayOutHands } from "./way-out-hands.ts";

interface Props extends WayOutHands {
  readonly snag: Snag;
  readonly active: boolean;
}

/** One snag: its grade, what is wrong and by how much, the ways out, where the limit comes from. */
export function SnagEntry({ snag, active, ...hands }: Props) {
  const entry = useRef<HTMLLIElement>(null);

  useEffect(() => {
    // Not every test DOM scrolls.
    if (active) entry.current?.scrollIntoView?.({ block: "nearest" });
  }, [active]);

  const show = () => {
    const { select, lookAt, garden } = useEditor.getState();
    const there = new Set(garden.items.map(({ id }) => id));
    select(snag.itemIds.filter((id) => there.has(id)));
    lookAt(snag.key);
  };

  return (
    <li ref={entry} className="snag" data-active={active} data-grade={snag.grade} data-snag={snag.key}>
      <GradeMark grade={snag.grade} />
      <div className="snag-body">
        <h3>
          <button type="button" className="snag-title" aria-pressed={active} onClick={show}>
            <span className="unseen">{gradeWords(snag.grade)}: </span>
            {snag.title}
          </button>
        </h3>
        <p>{snag.detail}</p>
        {snag.waysOut.length > 0 ? (
          <p className="ways-out">
            {snag.waysOut.map((way) => (
              // Two beds may bear one name: ways out are told apart by what they do.
              <WayOutButton key={JSON.stringify(way.ops)} way={way} {...hands} />
            ))}
          </p>
        ) : null}
        {active && snag.grade !== "note" ? <ShiftToClear snag={snag} {...hands} /> : null}
        {active ? <p className="snag-why">{snag.why}</p> : null}
        <SourceLine snag={snag} />
      </div>
    </li>
  );
}
