import { type FocusEvent, type KeyboardEvent, type MouseEvent, memo, useCallback, useState } from "react";
import {
  cropIdsOf,
  describeItem,
  type Item,
  type ItemId,
  nameOf,
  ownName,
  say,
  type Units,
} from "../../src/index.ts";
import { cropWordOf } from "../planting/crop-words.ts";
import { useEditor } from "../store/use-editor.ts";
import { useMarks } from "./hands/marks.ts";
import { planKey, toCard } from "./hands/plan-keys.ts";
import { waitingCrop } from "./hands/planting.ts";
import { DESK } from "./hands/use-hands.ts";
import { usePlanSize } from "./plan-size.ts";
import { toScreen } from "./viewport.ts";
import "./plan-list.css";

/**
 * The plan's twin in the page: every thing in the garden, to be reached, read out and worked by keyboard. Out of
 * sight until the keyboard is in it. It shows the garden as committed: while something is dragged it stays still.
 */
export function PlanList() {
  const items = useEditor((state) => state.garden.items);
  const units = useEditor((state) => state.garden.units);
  const [side, setSide] = useState<Side>("left");

  const point = (event: FocusEvent<HTMLElement>) => {
    const item = items.find(({ id }) => id === event.target.dataset.item);
    useMarks.setState({ pointed: item?.id ?? null });
    if (item) setSide(sideAwayFrom(item));
  };
  return (
    // The arrow keys move what is chosen, so a screen reader has to leave them to the page.
    <div
      className="plan-list"
      role="application"
      aria-label={say`Things on the plan`}
      data-side={side}
      onKeyDown={workByKey}
      onFocus={point}
      onBlur={() => useMarks.setState({ pointed: null })}
    >
      <p
        id="plan-list-help"
        className="plan-list-help"
      >{say`Space chooses, arrows move, [ and ] turn, Delete takes away, Enter goes to the card.`}</p>
      <ol>
        <li>
          <YardButton />
        </li>
        {items.map((item) => (
          <li key={item.id}>
            <ItemButton item={item} units={units} />
          </li>
        ))}
      </ol>
    </div>
  );
}

type Side = "left" | "right";

/** The list keeps to the half of the plan where the thing in focus is not. */
function sideAwayFrom({ at }: Item): Side {
  const { view } = useEditor.getState();
  return toScreen(view, at)[0] < usePlanSize.getState().width / 2 ? "right" : "left";
}

const YardButton = () => {
  const chosen = useEditor((state) => state.yardSelected);
  return (
    <button
      type="button"
      aria-pressed={chosen}
      data-item="yard"
      aria-describedby="plan-list-help"
      onClick={() => useEditor.getState().selectYard()}
    >{say`The yard’s outline`}</button>
  );
};

const ItemButton = memo(function ItemButton({ item, units }: { readonly item: Item; readonly units: Units }) {
  const chosen = useEditor((state) => state.selection.has(item.id));
  const choose = useCallback(
    (event: MouseEvent) => {
      const { select, toggleSelected, lookAt } = useEditor.getState();
      lookAt(null);
      if (event.shiftKey || event.ctrlKey || event.metaKey) toggleSelected(item.id);
      else select([item.id]);
    },
    [item.id],
  );
  return (
    <button
      type="button"
      aria-pressed={chosen}
      data-item={item.id}
      data-x={item.at[0]}
      data-y={item.at[1]}
      onClick={choose}
    >
      {wordsFor(item, units)}
    </button>
  );
});

function wordsFor(item: Item, units: Units): string {
  const said = describeItem(item, units);
  const words = ownName(item) ? said : `${nameOf(item)}: ${said}`;
  const crops = item.kind === "bed" ? cropIdsOf(item).map(cropWordOf) : [];
  return crops.length > 0 ? `${words}; ${crops.join(", ")}` : words;
}

function workByKey(event: KeyboardEvent<HTMLElement>) {
  const { target } = event;
  const id = target instanceof HTMLElement ? target.dataset.item : undefined;
  // Space and a plain press are the button's own; a chord with Shift still chooses as well.
  if (event.key === " ") return;
  if (id && !isAside(event)) chooseFocused(id);
  // A crop that waits goes into the bed in focus; with nothing waiting Enter goes to its card.
  if (event.key === "Enter" && waitingCrop(useEditor.getState().placing) === null) {
    if (toCard(DESK)) event.preventDefault();
  } else {
    const next = target instanceof HTMLElement ? neighbourOf(target) : null;
    if (planKey(DESK, event.nativeEvent)) event.preventDefault();
    // What was in focus may be gone: the keyboard goes on from its neighbour.
    if (id && id !== "yard" && !useEditor.getState().garden.items.some((item) => item.id === id))
      next?.focus();
  }
  if (event.defaultPrevented) event.stopPropagation();
}

const neighbourOf = (button: HTMLElement): HTMLElement | null => {
  const row = button.closest("li");
  return (row?.nextElementSibling ?? row?.previousElementSibling)?.querySelector("button") ?? null;
};

/** Keys that are not about the thing in focus. */
const isAside = ({ key, ctrlKey, metaKey }: KeyboardEvent): boolean =>
  ["Tab", "Shift", "Control", "Alt", "Meta", "Escape"].includes(key) ||
  ((ctrlKey || metaKey) && key.toLowerCase() !== "d");

/** What is in focus is what keys work on, unless it is one of several chosen. */
function chooseFocused(id: string) {
  const { selection, yardSelected, select, selectYard } = useEditor.getState();
  if (id !== "yard" && !selection.has(id as ItemId)) select([id as ItemId]);
  if (id === "yard" && !yardSelected) selectYard();
}
