import { openRules } from "../help/rules-wanted.ts";
import { HAND_KEYS } from "../plan/hands/keys.ts";
import { KEY_NAMES } from "../topbar/shortcuts.ts";
import { Dialog } from "./Dialog.tsx";

interface KeyLine {
  readonly keys: string;
  readonly does: string;
}

const PAGE_KEYS: readonly KeyLine[] = [
  { keys: KEY_NAMES.undo, does: "Undo" },
  { keys: KEY_NAMES.redo, does: "Redo" },
  { keys: `${KEY_NAMES.zoomIn} ${KEY_NAMES.zoomOut}`, does: "Draw larger, smaller" },
  { keys: KEY_NAMES.fit, does: "The whole yard" },
  { keys: KEY_NAMES.help, does: "This page" },
];

const MOUSE: readonly KeyLine[] = [
  { keys: "Wheel or pinch", does: "Zoom about the pointer" },
  { keys: "Space-drag, middle button or two fingers", does: "Move the paper" },
  { keys: "Alt while dragging", does: "Leave the snapping off" },
];

const STEPS = [
  "Give the yard its outline: choose the yard, then drag its corners or type its sides under Site.",
  "Drag house, doors, taps, fences and trees out of the barrow under the plan. Mark the kitchen door.",
  "Drag beds out, and watch what the ledger says is still to fix. Each snag says why, and offers its ways out.",
  "When there is nothing left to fix, press Build sheet and print the one page.",
];

/** How to start, and every key. */
export function HelpDialog() {
  return (
    <Dialog title="How it works">
      <section aria-labelledby="help-start">
        <h3 id="help-start">How to start</h3>
        <ol className="steps">
          {STEPS.map((step) => (
            <li key={step}>{step}</li>
          ))}
        </ol>
        <p className="dialog-actions">
          <button type="button" className="button" onClick={() => openRules(null)}>
            The rules, and why
          </button>
        </p>
      </section>
      <Keys title="On the plan" lines={HAND_KEYS} />
      <Keys title="With the pointer" lines={MOUSE} />
      <Keys title="Everywhere" lines={PAGE_KEYS} />
    </Dialog>
  );
}

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
