import { afterEach, beforeEach, describe, expect, it, vi } from "vitest";
import { createTabs, type TabDoings } from "../../../app/keeping/tabs.ts";

/** A browser's locks, as the Web Locks API says (W3C): first come, first served; a lock can be taken by force. */
function createLocks() {
  interface Asking {
    readonly grant: (lock: Lock | null) => unknown;
    readonly fail: (reason: unknown) => void;
    readonly done: (value: unknown) => void;
  }
  const queues = new Map<string, Asking[]>();
  const holders = new Map<string, Asking>();

  const next = (name: string) => {
    const asking = queues.get(name)?.shift();
    if (asking) grantTo(name, asking);
  };
  const grantTo = (name: string, asking: Asking) => {
    holders.set(name, asking);
    void Promise.resolve(asking.grant({ name, mode: "exclusive" })).then((value) => {
      asking.done(value);
      if (holders.get(name) !== asking) return;
      holders.delete(name);
      next(name);
    });
  };
  const request = (
    name: string,
    options: LockOptions,
    grant: (lock: Lock | null) => unknown,
  ): Promise<unknown> =>
    new Promise((done, fail) => {
      const asking: Asking = { grant, fail, done };
      const holder = holders.get(name);
      if (holder && options.steal) {
        holder.fail(new DOMException("taken", "AbortError"));
        grantTo(name, asking);
      } else if (!holder) grantTo(name, asking);
      else if (options.ifAvailable) done(grant(null));
      else {
        queues.set(name, [...(queues.get(name) ?? []), asking]);
        options.signal?.addEventListener("abort", () => {
          queues.set(
            name,
            (queues.get(name) ?? []).filter((one) => one !== asking),
          );
          fail(new DOMException("given up", "AbortError"));
        });
      }
    });
  return { request: request as LockManager["request"], holders };
}

/** A browser with several tabs, which hear one another and not themselves. */
function createBrowser() {
  const locks = createLocks();
  const listeners: ((event: MessageEvent) => unknown)[] = [];
  const tab = (changes: Partial<TabDoings> = {}) => {
    const heard: string[] = [];
    const doings: TabDoings = {
      letGo: async (id) => {
        heard.push(`let go of ${id}`);
        return true;
      },
      mayChange: (id) => heard.push(`may change ${id}`),
      taken: (id) => heard.push(`taken ${id}`),
      heldBack: (id) => heard.push(`held back ${id}`),
      keptElsewhere: (id) => heard.push(`kept elsewhere ${id}`),
      ...changes,
    };
    let own: ((event: MessageEvent) => unknown) | null = null;
    const channel = {
      postMessage(data: unknown) {
        for (const listener of listeners)
          if (listener !== own) listener(new MessageEvent("message", { data }));
      },
      addEventListener(_: string, listener: (event: MessageEvent) => unknown) {
        own = listener;
        listeners.push(listener);
      },
    } as Pick<BroadcastChannel, "postMessage" | "addEventListener">;
    return { ...createTabs(locks, channel, doings), heard };
  };
  return { tab, locks };
}

beforeEach(() => {
  vi.useFakeTimers();
});
afterEach(() => {
  vi.useRealTimers();
});

/** Claims of a garden another tab holds take a few tries. */
async function claimed(claim: Promise<boolean>): Promise<boolean> {
  await vi.advanceTimersByTimeAsync(1000);
  return claim;
}

describe("one tab a garden", () => {
  it("lets the first tab change a garden, and the second one look", async () => {
    const { tab } = createBrowser();
    const [first, second] = [tab(), tab()];
    expect(await claimed(first.claim("g"))).toBe(true);
    expect(await claimed(second.claim("g"))).toBe(false);
    expect(await claimed(second.claim("another"))).toBe(true);
  });

  it("passes a garden on when it is asked for, and not before the first tab has kept its changes", async () => {
    const { tab } = createBrowser();
    let kept: () => void = () => undefined;
    const heard: string[] = [];
    const first = tab({
      letGo: async () => {
        await new Promise<void>((resolve) => {
          kept = resolve;
        });
        heard.push("kept");
        return true;
      },
    });
    const second = tab({ mayChange: () => heard.push("may change") });
    await claimed(first.claim("g"));
    await claimed(second.claim("g"));
    second.takeOver();
    await vi.advanceTimersByTimeAsync(500);
    expect(heard).toEqual([]);
    kept();
    await vi.advanceTimersByTimeAsync(500);
    expect(heard).toEqual(["kept", "may change"]);
  });

  it("passes it back once the second tab is closed", async () => {
    const { tab } = createBrowser();
    const [first, second] = [tab(), tab()];
    await claimed(first.claim("g"));
    await claimed(second.claim("g"));
    second.takeOver();
    await vi.advanceTimersByTimeAsync(500);
    expect(second.heard).toEqual(["may change g"]);
    second.release();
    await vi.advanceTimersByTimeAsync(500);
    expect(first.heard).toEqual(["let go of g", "may change g"]);
  });

  it("gives it to the tab that asked, not to one that has waited longer", async () => {
    const { tab } = createBrowser();
    const [first, second, third] = [tab(), tab(), tab()];
    for (const each of [first, second, third]) await claimed(each.claim("g"));
    third.takeOver();
    await vi.advanceTimersByTimeAsync(5000);
    expect(third.heard).toEqual(["may change g"]);
    expect(second.heard).toEqual([]);
  });

  it("takes nothing from a tab that cannot keep what it holds, however long one waits", async () => {
    const { tab } = createBrowser();
    const first = tab({ letGo: async () => false });
    const second = tab();
    await claimed(first.claim("g"));
    await claimed(second.claim("g"));
    second.takeOver();
    await vi.advanceTimersByTimeAsync(60_000);
    expect(second.heard).toEqual(["held back g"]);
    expect(first.heard).toEqual([]);
  });

  it("takes a garden from a tab that answers nothing, and that tab is told when it wakes", async () => {
    const { tab } = createBrowser();
    const first = tab({ letGo: () => new Promise(() => undefined) });
    const second = tab();
    await claimed(first.claim("g"));
    await claimed(second.claim("g"));
    second.takeOver();
    await vi.advanceTimersByTimeAsync(3500);
    expect(second.heard, "it has its time to answer").toEqual([]);
    await vi.advanceTimersByTimeAsync(1000);
    expect(second.heard).toEqual(["may change g"]);
    expect(first.heard).toEqual(["taken g"]);
  });

  it("lets go of one garden when another comes onto the board", async () => {
    const { tab, locks } = createBrowser();
    const [first, second] = [tab(), tab()];
    await claimed(first.claim("g"));
    await claimed(second.claim("g"));
    expect(await claimed(first.claim("h"))).toBe(true);
    expect(second.heard).toEqual(["may change g"]);
    expect([...locks.holders.keys()].sort()).toEqual(["bedwright-garden-g", "bedwright-garden-h"]);
  });

  it("holds nothing of a garden that was left before it was known whether it may be changed", async () => {
    const { tab, locks } = createBrowser();
    const [first, second] = [tab(), tab()];
    await claimed(first.claim("g"));
    const early = second.claim("g");
    const late = second.claim("h");
    first.release();
    expect(await claimed(early)).toBe(false);
    expect(await claimed(late)).toBe(true);
    expect([...locks.holders.keys()]).toEqual(["bedwright-garden-h"]);
  });

  it("tells the tabs that look on of each change that is kept", async () => {
    const { tab } = createBrowser();
    const [first, second] = [tab(), tab()];
    await claimed(first.claim("g"));
    await claimed(second.claim("g"));
    first.tellKept("g");
    expect(second.heard).toEqual(["kept elsewhere g"]);
    expect(first.heard).toEqual([]);
  });
});
