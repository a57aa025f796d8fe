import { type Garden, told, word } from "../../src/index.ts";
import type { Editor } from "../store/editor.ts";
import { keepState, type State } from "./earlier-states.ts";
import { type Line, recordHistory } from "./history-record.ts";
import { reasonOf } from "./reason-of.ts";
import type { Shelf } from "./shelf.ts";
import { asStored, type KeptChange } from "./stored.ts";
import { useKeeping } from "./use-keeping.ts";

/** A run of key presses is written once it pauses, */
const PAUSE_MS = 250;
/** and however long it goes on, well within a second of its first change. */
const LONGEST_WAIT_MS = 500;
const TRY_AGAIN_MS = 5000;

/** What is known of the garden that has come onto the board. */
export interface Adopted {
  /** Null for one that is not kept until it changes. */
  readonly id: string | null;
  /** What is kept of its history; null where nothing is. */
  readonly line: Line | null;
  /** When it was last changed; null where that is not known. */
  readonly changed: number | null;
}

export interface Keeper {
  /** Says which kept garden the one on the board is. */
  adopt(adopted: Adopted): void;
  /** Keeps the garden on the board now, changed or not; true if that went well. */
  keepNow(): Promise<boolean>;
  /** Whether there are changes that are not kept yet. */
  hasUnkept(): boolean;
  /** What would be written now. */
  unkept(): KeptChange;
  stop(): void;
}

interface World {
  readonly now: () => number;
  readonly newId: () => string;
  /** Called each time something has been kept. */
  readonly onKept?: (id: string) => void;
}

/**
 * Keeps the garden on the board whenever it changes, with its history, and its earlier states after it. What cannot
 * be kept is said at once and stays said until it can; it is tried again by itself and with the next change.
 */
export function createKeeper(editor: Editor, shelf: Shelf, { now, newId, onKept }: World): Keeper {
  let timer: ReturnType<typeof setTimeout> | undefined;
  let running: Promise<boolean> = Promise.resolve(true);
  let statesRunning: Promise<void> = Promise.resolve();
  let board = onBoard({ id: null, line: null, changed: null });
  let expected: Garden = editor.getState().garden;

  /** What belongs to one stay of a garden on the board: late answers about an earlier one find another. */
  function onBoard({ id, line, changed }: Adopted) {
    const before: State = { at: changed ?? now(), garden: editor.getState().garden, label: "" };
    return {
      id: id ?? newId(),
      line,
      /** Since when there is something to be kept; null while there is nothing. */
      unkeptSince: null as number | null,
      /** The garden as it came, which is worth a state once it has changed. */
      before: before as State | null,
      /** The last state, and the past it has: a run of presses that is one step is one state. */
      state: null as { readonly at: number; readonly past: readonly unknown[] } | null,
    };
  }

  const later = (ms: number) => {
    clearTimeout(timer);
    timer = setTimeout(() => void keepNow(), ms);
  };

  const keepNow = (): Promise<boolean> => {
    clearTimeout(timer);
    // One after another: an earlier garden must not be written over a later one.
    running = running.then(write);
    return running;
  };

  const write = async (): Promise<boolean> => {
    const stay = board;
    const { garden, past, future } = editor.getState();
    const { line, span, steps } = recordHistory(stay.line, { garden, past, future });
    const changed = now();
    let lacking: string | undefined;
    try {
      try {
        await shelf.put({ garden: asStored(stay.id, garden, changed, span), steps });
        stay.line = line;
      } catch (error) {
        if (!isFull(error)) throw error;
        // The garden comes before its history.
        await shelf.put({ garden: asStored(stay.id, garden, changed), steps: [] });
        stay.line = null;
        lacking = told(WITHOUT_HISTORY);
      }
    } catch (error) {
      if (stay !== board) return false;
      stay.unkeptSince ??= changed;
      useKeeping.setState({ keeping: { state: "not-kept", reason: reasonOf(error) } });
      later(TRY_AGAIN_MS);
      return false;
    }
    onKept?.(stay.id);
    const label = past.at(-1)?.label ?? "";
    keepStates(stay, { at: changed, garden, label }, past);
    // Another garden may have come onto the board meanwhile, with an id of its own.
    if (stay !== board) return true;
    if (useKeeping.getState().gardenId !== stay.id) useKeeping.setState({ gardenId: stay.id });
    const isLast = editor.getState().garden === garden;
    stay.unkeptSince = isLast ? null : changed;
    if (isLast) {
      useKeeping.setState({
        keeping: { state: "kept", at: changed, ...(lacking === undefined ? {} : { lacking }) },
      });
    }
    return true;
  };

  /** Earlier states follow in their own time: no change waits for them. */
  const keepStates = (stay: typeof board, state: State, past: readonly unknown[]) => {
    const { before } = stay;
    stay.before = null;
    const inPlaceOf = stay.state?.past === past ? stay.state.at : null;
    stay.state = { at: state.at, past };
    statesRunning = statesRunning.then(async () => {
      try {
        if (before && before.garden !== state.garden) await keepState(shelf, stay.id, before);
        await keepState(shelf, stay.id, state, inPlaceOf);
      } catch {
        const { keeping } = useKeeping.getState();
        if (stay !== board || keeping.state !== "kept") return;
        useKeeping.setState({ keeping: { lacking: told(WITHOUT_STATES), ...keeping } });
      }
    });
  };

  const stopListening = editor.subscribe(({ garden }) => {
    if (garden === expected) return;
    expected = garden;
    const time = now();
    board.unkeptSince ??= time;
    if (useKeeping.getState().keeping.state === "kept") {
      useKeeping.setState({ keeping: { state: "keeping" } });
    }
    later(Math.min(PAUSE_MS, Math.max(0, board.unkeptSince + LONGEST_WAIT_MS - time)));
  });

  return {
    adopt(adopted) {
      clearTimeout(timer);
      expected = editor.getState().garden;
      board = onBoard(adopted);
      useKeeping.setState({ gardenId: adopted.id, keeping: { state: "kept", at: adopted.changed } });
    },
    keepNow,
    hasUnkept: () => board.unkeptSince !== null,
    unkept() {
      const { garden, past, future } = editor.getState();
      const { span, steps } = recordHistory(board.line, { garden, past, future });
      return { garden: asStored(board.id, garden, now(), span), steps };
    },
    stop() {
      clearTimeout(timer);
      stopListening();
    },
  };
}

const WITHOUT_HISTORY = word(
  "Saved, but this device’s storage is nearly full: after a reload there is nothing to undo. Remove gardens you no longer need.",
);
const WITHOUT_STATES = word(
  "Saved, but earlier states are not kept: this device’s storage is nearly full. Remove gardens you no longer need.",
);

const isFull = (error: unknown): boolean =>
  error instanceof DOMException && error.name === "QuotaExceededError";
