/** Tries of a page that has just been loaded: the page it took the place of may be a moment from letting go. */
const TRIES = 3;
const BETWEEN_TRIES_MS = 120;
/** A tab that answers nothing for so long will not. */
const NO_ANSWER_MS = 4000;
/** Time for the tab that asked to get ahead of others that wait. */
const MAKE_WAY_MS = 1000;

type Message =
  /** Somebody would like to change the garden in their tab. */
  | { readonly say: "let-go"; readonly id: string }
  /** The answer of a tab that cannot keep what it holds. */
  | { readonly say: "held-back"; readonly id: string }
  | { readonly say: "kept"; readonly id: string };

/** What a tab does when others speak to it. */
export interface TabDoings {
  /** Keeps what is not kept yet and lets nothing more be changed; false where it cannot be kept. */
  letGo(id: string): Promise<boolean>;
  /** The garden can be changed here from now on. */
  mayChange(id: string): void;
  /** The garden was taken from this tab while it gave no answer. */
  taken(id: string): void;
  heldBack(id: string): void;
  /** Another tab has kept a change of the garden that is looked at here. */
  keptElsewhere(id: string): void;
}

export interface Tabs {
  /**
   * Asks to be the one tab that changes this garden, and lets go of the one before. Where another tab is that, false;
   * `mayChange` then follows once the other lets go or is closed.
   */
  claim(id: string): Promise<boolean>;
  /** Asks the other tab to let go of the garden waited for. */
  takeOver(): void;
  /** Lets go of whatever is held or waited for. */
  release(): void;
  tellKept(id: string): void;
}

interface Held {
  readonly id: string;
  readonly release: () => void;
}

type Locks = Pick<LockManager, "request">;
type Channel = Pick<BroadcastChannel, "postMessage" | "addEventListener">;

const lockOf = (id: string) => `bedwright-garden-${id}`;

/**
 * Sees to it that each garden is changed in one tab at a time: whoever holds its lock. The browser drops the lock of
 * a tab that is closed or crashes.
 */
export function createTabs(locks: Locks, channel: Channel, doings: TabDoings): Tabs {
  let held: Held | null = null;
  let waiting: { readonly id: string; readonly abort: AbortController } | null = null;
  /** The claim under way or last made: one that was overtaken by another must not take hold. */
  let claimed: object | null = null;
  let noAnswer: ReturnType<typeof setTimeout> | undefined;
  const tell = (message: Message) => channel.postMessage(message);

  /** Asks for the lock; settles once it is known whether it is had. */
  const hold = (id: string, options: LockOptions): Promise<Held | null> =>
    new Promise((settle) => {
      let own: Held | null = null;
      const whileHeld = (lock: Lock | null) => {
        if (!lock) return settle(null);
        return new Promise<void>((release) => {
          own = { id, release };
          settle(own);
        });
      };
      locks.request(lockOf(id), options, whileHeld).catch(() => {
        // Either the wait was given up, or the lock was taken out of our hands.
        settle(null);
        if (!own || held !== own) return;
        held = null;
        doings.taken(id);
      });
    });

  const release = () => {
    clearTimeout(noAnswer);
    waiting?.abort.abort();
    waiting = null;
    held?.release();
    held = null;
  };

  /** Waits until whoever holds the garden lets go. */
  const wait = (id: string, options: LockOptions = {}) => {
    const abort = new AbortController();
    waiting = { id, abort };
    void hold(id, options.steal ? options : { signal: abort.signal }).then((got) => {
      if (waiting?.abort !== abort) return got?.release();
      if (!got) return;
      held = got;
      waiting = null;
      clearTimeout(noAnswer);
      doings.mayChange(id);
    });
  };

  const onMessage = async ({ say, id }: Message) => {
    if (say === "let-go" && held?.id === id) {
      if (!(await doings.letGo(id))) return tell({ say: "held-back", id });
      release();
      wait(id);
    } else if (say === "let-go" && waiting?.id === id) {
      // Whoever asked goes first.
      const { abort } = waiting;
      abort.abort();
      setTimeout(() => waiting?.abort === abort && wait(id), MAKE_WAY_MS);
    } else if (say === "held-back" && waiting?.id === id) {
      clearTimeout(noAnswer);
      doings.heldBack(id);
    } else if (say === "kept" && held?.id !== id) {
      doings.keptElsewhere(id);
    }
  };
  channel.addEventListener("message", ({ data }: MessageEvent<Message>) => void onMessage(data));

  return {
    async claim(id) {
      if (held?.id === id) return true;
      release();
      const mine = {};
      claimed = mine;
      for (let i = 0; i < TRIES; i++) {
        const got = await hold(id, { ifAvailable: true });
        if (claimed !== mine) {
          got?.release();
          return false;
        }
        if (got) {
          held = got;
          return true;
        }
        await new Promise((goOn) => setTimeout(goOn, BETWEEN_TRIES_MS));
      }
      if (claimed === mine) wait(id);
      return false;
    },
    takeOver() {
      if (!waiting) return;
      const { id } = waiting;
      tell({ say: "let-go", id });
      clearTimeout(noAnswer);
      noAnswer = setTimeout(() => {
        if (waiting?.id !== id) return;
        waiting.abort.abort();
        wait(id, { steal: true });
      }, NO_ANSWER_MS);
    },
    release() {
      claimed = null;
      release();
    },
    tellKept: (id) => tell({ say: "kept", id }),
  };
}

/** For a browser that knows of no locks: each tab is alone. */
export const ALONE: Tabs = {
  claim: async () => true,
  takeOver() {},
  release() {},
  tellKept() {},
};
