import { say, told, word } from "../../src/index.ts";
import { openRules } from "../help/rules-wanted.ts";
import { HAND_KEYS } from "../plan/hands/keys.ts";
import { keyNames } from "../topbar/shortcuts.ts";
import { Dialog } from "./Dialog.tsx";

interface KeyLine {
  readonly keys: string;
  readonly does: string;
}

const pageKeys = (): readonly KeyLine[] => {
  const { undo, redo, zoomIn, zoomOut, fit, help } = keyNames();
  return [
    { keys: undo, does: say`Undo` },
    { keys: redo, does: say`Redo` },
    { keys: `${zoomIn} ${zoomOut}`, does: say`Draw larger, smaller` },
    { keys: fit, does: say`The whole yard` },
    { keys: help, does: say`This page` },
  ];
};

const MOUSE: readonly KeyLine[] = [
  { keys: word("Wheel or pinch"), does: word("Zoom about the pointer") },
  { keys: word("Space-drag, middle button or two fingers"), does: word("Move the paper") },
  { keys: word("Alt while dragging"), does: word("Leave the snapping off") },
];

const STEPS = [
  word("Give the yard its outline: choose the yard, then drag its corners or type its sides under Site."),
  word("Drag house, doors, taps, fences and trees out of the barrow under the plan. Mark the kitchen door."),
  word(
    "Drag beds out, and watch what the ledger says is still to fix. Each snag says why, and offers its ways out.",
  ),
  word("When there is nothing left to fix, press Build sheet and print the one page."),
];

/** How to start, and every key. */
export function HelpDialog() {
  return (
    <Dialog title={say`How it works`}>
      <section aria-labelledby="help-start">
        <h3 id="help-start">{say`How to start`}</h3>
        <ol className="steps">
          {STEPS.map((step) => (
            <li key={step}>{told(step)}</li>
          ))}
        </ol>
        <p className="dialog-actions">
          <button
            type="button"
            className="button"
            onClick={() => openRules(null)}
          >{say`The rules, and why`}</button>
        </p>
      </section>
      <Keys title={say`On the plan`} lines={toldLines(HAND_KEYS)} />
      <Keys title={say`With the pointer`} lines={toldLines(MOUSE)} />
      <Keys title={say`Everywhere`} lines={pageKeys()} />
    </Dialog>
  );
}

/** A letter's key is called the same in every language. */
const toldLines = (lines: readonly KeyLine[]): readonly KeyLine[] =>
  lines.map(({ keys, does }) => ({ keys: keys.length === 1 ? keys : told(keys), does: told(does) }));

function Keys({ title, lines }: { readonly title: string; readonly lines: readonly KeyLine[] }) {
  return (
    <section aria-label={title}>
      <h3>{title}</h3>
      <dl className="keys">
        {lines.map(({ keys, does }) => (
          <div key={keys}>
            <dt>{keys}</dt>
            <dd>{does}</dd>
          </div>
        ))}
      </dl>
    </section>
  );
}
