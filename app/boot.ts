import { EXAMPLES } from "../src/index.ts";
import { type Board, createBoard, unkeptGarden } from "./keeping/board.ts";
import { createDatabaseShelf } from "./keeping/database.ts";
import { firstGarden } from "./keeping/first-garden.ts";
import { createGardens } from "./keeping/gardens.ts";
import { createKeeper, type Keeper } from "./keeping/keeper.ts";
import { setDown, takeUp } from "./keeping/last-moment.ts";
import { lastOpen, rememberOpen } from "./keeping/last-open.ts";
import { provideGardens } from "./keeping/page-gardens.ts";
import { askForPersistence } from "./keeping/persistence.ts";
import { reasonOf } from "./keeping/reason-of.ts";
import type { Shelf } from "./keeping/shelf.ts";
import { ALONE, createTabs, type TabDoings, type Tabs } from "./keeping/tabs.ts";
import { useKeeping } from "./keeping/use-keeping.ts";
import { startOfflineAtRest } from "./offline/updates.ts";
import { useEditor } from "./store/use-editor.ts";

const world = { now: () => Date.now(), newId: () => crypto.randomUUID() };

/** What has to be there before the first paint: the garden on the board, and what keeps it. */
export async function boot(): Promise<void> {
  const shelf = createDatabaseShelf();
  let tabs = ALONE;
  const makeTabs = (doings: TabDoings): Tabs => {
    if (navigator.locks && "BroadcastChannel" in window) {
      tabs = createTabs(navigator.locks, new BroadcastChannel("bedwright"), doings);
    }
    return tabs;
  };
  const keeper = createKeeper(useEditor, shelf, { ...world, onKept: (id) => tabs.tellKept(id) });
  const board = createBoard(useEditor, shelf, keeper, makeTabs, world);
  provideGardens(createGardens(useEditor, shelf, keeper, board, world.newId));

  await layFirst(shelf, board, keeper);
  useKeeping.subscribe(({ gardenId }) => rememberOpen(gardenId));
  askForPersistence(navigator.storage);

  // The page may be closed within the keeper's pause.
  addEventListener("pagehide", () => keepUnkept());
  document.addEventListener("visibilitychange", () => document.hidden && keepUnkept());
  addEventListener("beforeunload", (event) => {
    const { keeping } = useKeeping.getState();
    if (keeper.hasUnkept() && keeping.state === "not-kept") event.preventDefault();
  });
  if (import.meta.env.PROD) startOfflineAtRest();
  setTimeout(() => void sweepPictures(shelf), LONG_AFTER_START_MS);
  // The engine is large: it loads while the plan is already on the screen.
  void import("./live/analysis.ts").then(({ startAnalysis }) => startAnalysis(useEditor));

  function keepUnkept() {
    if (!keeper.hasUnkept()) return;
    const change = keeper.unkept();
    useKeeping.setState({ gardenId: change.garden.id });
    setDown(change);
    void keeper.keepNow();
  }
}

/** When the page has long been on the screen, and nobody waits for anything. */
const LONG_AFTER_START_MS = 20_000;

async function sweepPictures(shelf: Shelf): Promise<void> {
  const { pagePictures } = await import("./underlay/page-pictures.ts");
  await pagePictures().sweep(shelf, useEditor);
}

/** What cannot be kept is said before anything is done that could be lost. */
async function layFirst(shelf: Shelf, board: Board, keeper: Keeper): Promise<void> {
  try {
    const left = await takeUp(shelf);
    const { laid, setAside } = await firstGarden(shelf, lastOpen(), left);
    await board.lay(laid);
    useKeeping.setState({ setAside });
    if (left) await keeper.keepNow();
  } catch (error) {
    await board.lay(unkeptGarden(EXAMPLES[0].garden));
    useKeeping.setState({ keeping: { state: "not-kept", reason: reasonOf(error) } });
  }
}
