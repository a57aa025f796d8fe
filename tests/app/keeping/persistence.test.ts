import { beforeEach, describe, expect, it, vi } from "vitest";
import { askForPersistence } from "../../../app/keeping/persistence.ts";
import { useKeeping } from "../../../app/keeping/use-keeping.ts";

const storageThat = (already: boolean, persist = vi.fn(async () => true)) => ({
  persist,
  manager: { persist, persisted: async () => already } as Partial<StorageManager> as StorageManager,
});

const kept = (at: number) => useKeeping.setState({ keeping: { state: "kept", at } });

beforeEach(() => {
  useKeeping.setState({ gardenId: null, keeping: { state: "kept", at: null } });
});

describe("asking the browser not to clear gardens away", () => {
  it("waits until a change has been kept, and is done once", async () => {
    const { persist, manager } = storageThat(false);
    askForPersistence(manager);
    useKeeping.setState({ keeping: { state: "keeping" } });
    expect(persist).not.toHaveBeenCalled();
    kept(5);
    kept(6);
    await vi.waitFor(() => expect(persist).toHaveBeenCalledTimes(1));
  });

  it("asks nothing of a browser that has agreed already", async () => {
    const { persist, manager } = storageThat(true);
    askForPersistence(manager);
    kept(5);
    await new Promise((goOn) => setTimeout(goOn, 5));
    expect(persist).not.toHaveBeenCalled();
  });

  it("goes on without it where the browser refuses or knows nothing of it", async () => {
    askForPersistence(undefined);
    const persist = vi.fn(async () => Promise.reject(new TypeError("refused")));
    askForPersistence(storageThat(false, persist).manager);
    kept(5);
    await vi.waitFor(() => expect(persist).toHaveBeenCalled());
    expect(useKeeping.getState().keeping.state).toBe("kept");
  });
});
