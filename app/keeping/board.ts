import { type Garden, readGardenText, say } from "../../src/index.ts";
import type { Editor, History } from "../store/editor.ts";
import { readHistory } from "./history-record.ts";
import type { Adopted, Keeper } from "./keeper.ts";
import type { Shelf } from "./shelf.ts";
import { asStored, type StoredGarden } from "./stored.ts";
import type { TabDoings, Tabs } from "./tabs.ts";
import { useKeeping } from "./use-keeping.ts";

/** A garden with all that is known of it, ready for the board. */
export interface Laid extends Adopted {
  readonly garden: Garden;
  readonly history?: History;
}

/** A garden that is not kept, or not yet. */
export const unkeptGarden = (garden: Garden, id: string | null = null): Laid => ({
  garden,
  id,
  line: null,
  changed: null,
});

/**
 * A kept garden with its history. A history that cannot be read is no reason not to open the garden.
 * @throws GardenFileError for a garden that cannot be read
 */
export async function laidOut(shelf: Shelf, stored: StoredGarden): Promise<Laid> {
  const garden = readGardenText(stored.text);
  const { id, changed, history: span } = stored;
  if (!span) return { garden, id, changed, line: null };
  const records = await shelf.steps(id).catch(() => []);
  return { garden, id, changed, ...readHistory(garden, span, records) };
}

/** Puts gardens on the board, and says in which tab they are changed. */
export interface Board {
  /** Puts a garden on the board; it can be changed unless another tab does so. */
  lay(laid: Laid): Promise<void>;
  takeOver(): void;
}

export function createBoard(
  editor: Editor,
  shelf: Shelf,
  keeper: Keeper,
  makeTabs: (doings: TabDoings) => Tabs,
  world: { readonly now: () => number; readonly newId: () => string },
): Board {
  const onBoard = (id: string) => useKeeping.getState().gardenId === id;

  const put = (laid: Laid) => {
    editor.getState().open(laid.garden, laid.history);
    keeper.adopt(laid);
  };

  /**
   * Puts the garden on the board as it is kept by now, while it is changed elsewhere; what cannot be read or got at
   * leaves the board as it is. One after another: an earlier garden must not be put over a later one.
   */
  let following: Promise<void> = Promise.resolve();
  const putAsKept = (id: string): Promise<void> => {
    following = following.then(async () => {
      try {
        const stored = await shelf.get(id);
        const laid = stored && (await laidOut(shelf, stored));
        if (laid && onBoard(id) && useKeeping.getState().place !== "here") put(laid);
      } catch {
        // The board shows what it showed.
      }
    });
    return following;
  };

  const onlyLook = () => {
    editor.getState().lock(true);
    useKeeping.setState({ place: "elsewhere" });
  };

  const change = () => {
    editor.getState().lock(false);
    useKeeping.setState({ place: "here" });
  };

  const tabs = makeTabs({
    async letGo(id) {
      editor.getState().lock(true);
      if (keeper.hasUnkept() && !(await keeper.keepNow())) {
        editor.getState().lock(false);
        return false;
      }
      if (onBoard(id)) onlyLook();
      return true;
    },
    async mayChange(id) {
      await putAsKept(id);
      if (onBoard(id)) change();
    },
    async taken(id) {
      if (!onBoard(id)) return;
      const { garden } = editor.getState();
      const hadUnkept = keeper.hasUnkept();
      onlyLook();
      if (hadUnkept) {
        const copy = { ...garden, name: say`${garden.name} (other tab)` };
        await shelf.put({ garden: asStored(world.newId(), copy, world.now()), steps: [] });
      }
      await putAsKept(id);
    },
    heldBack(id) {
      if (onBoard(id)) useKeeping.setState({ place: "held-back" });
    },
    keptElsewhere(id) {
      void putAsKept(id);
    },
  });

  // A garden that has just been kept for the first time becomes this tab's; one that was removed is nobody's.
  let claimed: string | null = null;
  useKeeping.subscribe(({ gardenId }) => {
    if (gardenId === claimed) return;
    claimed = gardenId;
    if (gardenId === null) tabs.release();
    else void tabs.claim(gardenId);
  });

  return {
    async lay(laid) {
      claimed = laid.id;
      put(laid);
      if (laid.id === null) {
        tabs.release();
        change();
        return;
      }
      // Until it is known, nothing is changed here.
      editor.getState().lock(true);
      const mayChange = await tabs.claim(laid.id);
      if (!onBoard(laid.id)) return;
      if (mayChange) change();
      else onlyLook();
    },
    takeOver: () => tabs.takeOver(),
  };
}
