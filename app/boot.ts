import { EXAMPLES, type Garden, GardenFileError, readGardenText } from "../src/index.ts";
import {
  type Database,
  openDatabase,
  putGarden,
  type StoredGarden,
  storedGardens,
} from "./keeping/database.ts";
import { createGardens } from "./keeping/gardens.ts";
import { asStored, createKeeper, reasonOf } from "./keeping/keeper.ts";
import { setDown, takeUp } from "./keeping/last-moment.ts";
import { lastOpen, rememberOpen } from "./keeping/last-open.ts";
import { provideGardens } from "./keeping/page-gardens.ts";
import { useKeeping } from "./keeping/use-keeping.ts";
import { useEditor } from "./store/use-editor.ts";

const now = () => Date.now();
const newId = () => crypto.randomUUID();

/** What has to be there before the first paint: the garden on the board, and what keeps it. */
export async function boot(): Promise<void> {
  const database = await openDatabase().catch((error: unknown) => {
    useKeeping.setState({ keeping: { state: "not-kept", reason: reasonOf(error) } });
    return null;
  });
  const shelf = database && { put: (garden: StoredGarden) => putGarden(database, garden) };
  const keeper = createKeeper(useEditor, shelf, now, newId);
  provideGardens(createGardens(useEditor, database, keeper, newId));

  if (database) await takeUp(database);
  const first = await firstGarden(database);
  useEditor.getState().open(first.garden);
  if (database) keeper.adopt(first.id);
  if (first.setAside) {
    useEditor.getState().say(`${first.setAside} could not be read and is set aside whole: see Gardens.`);
  }

  useKeeping.subscribe(({ gardenId }) => rememberOpen(gardenId));
  // The page may be closed within the keeper's pause.
  addEventListener("pagehide", () => keepIfChanged());
  document.addEventListener("visibilitychange", () => document.hidden && keepIfChanged());
  // The engine is large: it loads while the plan is already on the screen.
  void import("./live/analysis.ts").then(({ startAnalysis }) => startAnalysis(useEditor));

  function keepIfChanged() {
    const { keeping, gardenId } = useKeeping.getState();
    if (keeping.state === "kept") return;
    const id = gardenId ?? newId();
    useKeeping.setState({ gardenId: id });
    setDown(asStored(id, useEditor.getState().garden, now()));
    void keeper.keepNow();
  }
}

interface First {
  readonly id: string | null;
  readonly garden: Garden;
  /** Name of a garden that should have come first and could not be read. */
  readonly setAside: string | null;
}

/** The garden last on the board, else the last changed one that can be read, else the worked example. */
async function firstGarden(database: Database | null): Promise<First> {
  const stored = database ? await storedGardens(database) : [];
  const last = lastOpen();
  const inOrder = [...stored.filter(({ id }) => id === last), ...stored.filter(({ id }) => id !== last)];
  let setAside: string | null = null;
  for (const { id, name, text } of inOrder) {
    try {
      return { id, garden: readGardenText(text), setAside };
    } catch (error) {
      if (!(error instanceof GardenFileError)) throw error;
      setAside ??= name;
    }
  }
  return { id: null, garden: EXAMPLES[0].garden, setAside };
}
