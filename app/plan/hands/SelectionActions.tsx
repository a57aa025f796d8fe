import { memo, type ReactNode } from "react";
import { type Alignment, say, told, word } from "../../../src/index.ts";
import { useEditor } from "../../store/use-editor.ts";
import { align, alike, order, spaceEvenly, takeAway } from "./arrange.ts";
import { focusBoard } from "./board.ts";
import { DESK } from "./use-hands.ts";
import "./selection-actions.css";

const ALIGNMENTS: readonly { readonly by: Alignment; readonly label: string; readonly icon: ReactNode }[] = [
  { by: "left", label: word("Line up left edges"), icon: <path d="M3 2v16M6 5h8v4H6zM6 12h11v4H6z" /> },
  {
    by: "centre-x",
    label: word("Line up middles, left to right"),
    icon: <path d="M10 2v3M10 9v3M10 16v2M6 5h8v4H6zM4 12h12v4H4z" />,
  },
  { by: "right", label: word("Line up right edges"), icon: <path d="M17 2v16M6 5h8v4H6zM3 12h11v4H3z" /> },
  { by: "top", label: word("Line up upper edges"), icon: <path d="M2 3h16M5 6v8h4V6zM12 6v11h4V6z" /> },
  {
    by: "centre-y",
    label: word("Line up middles, top to bottom"),
    icon: <path d="M2 10h3M9 10h3M16 10h2M5 6v8h4V6zM12 4v12h4V4z" />,
  },
  { by: "bottom", label: word("Line up lower edges"), icon: <path d="M2 17h16M5 6v8h4V6zM12 3v11h4V3z" /> },
];

/** What can be done with everything selected at once: lining up, spacing, order, another, away. */
export const SelectionActions = memo(function SelectionActions() {
  const count = useEditor((state) => state.selection.size);
  if (count === 0) return null;
  return (
    <div className="selection-actions" role="toolbar" aria-label={say`What is selected`}>
      {count > 1 &&
        ALIGNMENTS.map(({ by, label, icon }) => (
          <Action key={by} label={told(label)} does={() => align(DESK, by)}>
            {icon}
          </Action>
        ))}
      {count > 2 && (
        <>
          <Action label={say`Space evenly across`} does={() => spaceEvenly(DESK, "x")}>
            <path d="M2 3v14M18 3v14M5 6h3v8H5zM12 6h3v8h-3z" />
          </Action>
          <Action label={say`Space evenly down`} does={() => spaceEvenly(DESK, "y")}>
            <path d="M3 2h14M3 18h14M6 5h8v3H6zM6 12h8v3H6z" />
          </Action>
        </>
      )}
      <Action label={say`To the front`} does={() => order(DESK, "front")}>
        <path d="M3 3h9v9H3z" fill="currentColor" />
        <path d="M14 8h3v9H8v-3" />
      </Action>
      <Action label={say`To the back`} does={() => order(DESK, "back")}>
        <path d="M3 3h9v9H3z" />
        <path d="M14 8h3v9H8v-3z" fill="currentColor" />
      </Action>
      <button type="button" onClick={() => alike(DESK)}>{say`Another`}</button>
      <button
        type="button"
        onClick={() => {
          focusBoard();
          takeAway(DESK);
        }}
      >{say`Remove`}</button>
    </div>
  );
});

interface ActionProps {
  readonly label: string;
  readonly does: () => void;
  readonly children: ReactNode;
}

const Action = ({ label, does, children }: ActionProps) => (
  <button type="button" aria-label={label} title={label} onClick={does}>
    <svg viewBox="0 0 20 20" width="20" height="20" aria-hidden="true">
      <g fill="none" stroke="currentColor" strokeWidth="1.4">
        {children}
      </g>
    </svg>
  </button>
);
