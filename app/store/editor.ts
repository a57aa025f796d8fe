import { create } from "zustand";
import { applyOps, type Garden, type ItemId, type Op, say, told, word } from "../../src/index.ts";

/** An earlier or later garden, and what was done between it and its neighbour ("Move Salads"). */
export interface Step {
  readonly garden: Garden;
  readonly label: string;
}

export type Leaf = "snags" | "takeoff" | "sun" | "year-round" | "site";

/** What leads up to the garden on the board, oldest first, and what was undone, nearest first. */
export interface History {
  readonly past: readonly Step[];
  readonly future: readonly Step[];
}

/** What part of the plan the window shows: the plan point at its top left corner, and pixels per mm. */
export interface View {
  readonly x: number;
  readonly y: number;
  readonly scale: number;
}

const MOST_STEPS = 200;
const LOCKED = word("Nothing was changed: this garden is being changed in another tab.");
const NO_HISTORY: History = { past: [], future: [] };

export interface EditorState {
  /** The garden as last committed. What is shown is `draft ?? garden`: see `shownGarden`. */
  readonly garden: Garden;
  /** The garden while a gesture runs; null between gestures. */
  readonly draft: Garden | null;
  readonly past: readonly Step[];
  readonly future: readonly Step[];
  readonly selection: ReadonlySet<ItemId>;
  /** The yard's own outline is selected: its corners can be dragged. Never together with things. */
  readonly yardSelected: boolean;
  /** Key of the snag being looked at. */
  readonly activeSnag: string | null;
  /** Id of the barrow's thing that waits for a tap on the plan. */
  readonly placing: string | null;
  readonly leaf: Leaf;
  /** The garden can be looked at and not changed: changes are left undone, and that is said. */
  readonly locked: boolean;
  readonly view: View;
  /** The last thing worth telling a screen reader; `count` makes the same words twice two messages. */
  readonly message: { readonly text: string; readonly count: number };

  /** Commits changes as one step of history. A broken op throws and leaves everything as it was. */
  commit(label: string, ops: readonly Op[]): void;
  /** Adds changes to the last step, so that a run of key presses is one step. Without a step it throws. */
  amend(ops: readonly Op[]): void;
  /** Shows changes to the committed garden without committing them. Each call starts from the committed garden. */
  preview(ops: readonly Op[]): void;
  /** Ends a gesture: its draft becomes one step of history. */
  commitPreview(label: string): void;
  dropPreview(): void;
  undo(): void;
  redo(): void;
  select(ids: Iterable<ItemId>): void;
  toggleSelected(id: ItemId): void;
  selectYard(): void;
  lookAt(snagKey: string | null): void;
  pick(barrowId: string | null): void;
  turnTo(leaf: Leaf): void;
  setView(view: View): void;
  say(text: string): void;
  /** Puts another garden on the board, with what is known of its history; the selection starts anew. */
  open(garden: Garden, history?: History): void;
  /** Puts another state of the same garden on the board, as one step of history. */
  replace(label: string, garden: Garden): void;
  /** Locks or unlocks the garden; a gesture that is under way is dropped. */
  lock(locked: boolean): void;
}

/** The garden on the screen: the draft while a gesture runs. */
export const shownGarden = (state: Pick<EditorState, "garden" | "draft">): Garden =>
  state.draft ?? state.garden;

const NOTHING: ReadonlySet<ItemId> = new Set();

/** Makes an editor of a garden; the page has one (see `use-editor.ts`), each test its own. */
export const createEditor = (first: Garden) =>
  create<EditorState>()((set, get) => {
    /** Selection without the things that are gone. */
    const stillThere = (garden: Garden, selection: ReadonlySet<ItemId>): ReadonlySet<ItemId> => {
      const left = garden.items.filter(({ id }) => selection.has(id)).map(({ id }) => id);
      return left.length === selection.size ? selection : new Set(left);
    };

    /** Whether a change is refused; it is said. */
    const refused = (): boolean => {
      if (get().locked) get().say(told(LOCKED));
      return get().locked;
    };

    const step = (label: string, garden: Garden) => {
      const { garden: before, past, selection } = get();
      set({
        garden,
        draft: null,
        past: [...past, { garden: before, label }].slice(-MOST_STEPS),
        future: [],
        selection: stillThere(garden, selection),
      });
    };

    return {
      garden: first,
      draft: null,
      past: [],
      future: [],
      selection: NOTHING,
      yardSelected: false,
      activeSnag: null,
      placing: null,
      leaf: "snags",
      locked: false,
      view: { x: 0, y: 0, scale: 0.05 },
      message: { text: "", count: 0 },

      commit(label, ops) {
        if (refused()) return;
        const garden = applyOps(get().garden, ops);
        if (garden !== get().garden) step(label, garden);
      },
      amend(ops) {
        if (refused()) return;
        const { past, garden: before, selection } = get();
        if (past.length === 0) throw new RangeError("there is no step to add to");
        const garden = applyOps(before, ops);
        set({ garden, draft: null, future: [], selection: stillThere(garden, selection) });
      },
      preview(ops) {
        if (!get().locked) set({ draft: applyOps(get().garden, ops) });
      },
      commitPreview(label) {
        if (refused()) return;
        const { draft, garden } = get();
        if (draft && draft !== garden) step(label, draft);
        else set({ draft: null });
      },
      dropPreview() {
        set({ draft: null });
      },
      undo() {
        if (refused()) return;
        const { past, future, garden, selection } = get();
        const last = past.at(-1);
        if (!last) return;
        set({
          garden: last.garden,
          draft: null,
          past: past.slice(0, -1),
          future: [{ garden, label: last.label }, ...future],
          selection: stillThere(last.garden, selection),
        });
        get().say(say`Undone: ${last.label}`);
      },
      redo() {
        if (refused()) return;
        const { past, future, garden, selection } = get();
        const next = future[0];
        if (!next) return;
        set({
          garden: next.garden,
          draft: null,
          past: [...past, { garden, label: next.label }],
          future: future.slice(1),
          selection: stillThere(next.garden, selection),
        });
        get().say(say`Done again: ${next.label}`);
      },
      select(ids) {
        const selection = new Set(ids);
        // What was to be added to a locked garden is not there.
        set({
          selection: get().locked ? stillThere(get().garden, selection) : selection,
          yardSelected: false,
        });
      },
      toggleSelected(id) {
        const selection = new Set(get().selection);
        if (!selection.delete(id)) selection.add(id);
        set({ selection, yardSelected: false });
      },
      selectYard() {
        set({ selection: NOTHING, yardSelected: true });
      },
      lookAt(activeSnag) {
        set({ activeSnag });
      },
      pick(placing) {
        set({ placing });
      },
      turnTo(leaf) {
        set({ leaf });
      },
      setView(view) {
        set({ view });
      },
      say(text) {
        set({ message: { text, count: get().message.count + 1 } });
      },
      open(garden, { past, future } = NO_HISTORY) {
        set({
          garden,
          draft: null,
          past,
          future,
          selection: NOTHING,
          yardSelected: false,
          activeSnag: null,
          placing: null,
        });
      },
      replace(label, garden) {
        if (!refused() && garden !== get().garden) step(label, garden);
      },
      lock(locked) {
        set(locked ? { locked, draft: null, placing: null } : { locked });
      },
    };
  });

export type Editor = ReturnType<typeof createEditor>;
