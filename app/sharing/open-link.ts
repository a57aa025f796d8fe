import { create } from "zustand";
import { say } from "../../src/index.ts";
import { pageGardens } from "../keeping/page-gardens.ts";
import { holdsGarden, ShareLinkError, textInLink } from "./share-link.ts";

/** What has come of the link the page was opened with; null where there was none, or it has been read and dismissed. */
export const useLinkNotice = create<{ readonly text: string | null; readonly failed: boolean }>()(() => ({
  text: null,
  failed: false,
}));

export const dismissLinkNotice = (): void => useLinkNotice.setState({ text: null, failed: false });

/** What of the browser's window is needed. */
export interface Page {
  readonly location: Pick<Location, "hash" | "pathname" | "search">;
  readonly history: Pick<History, "replaceState">;
}

/**
 * Takes the garden out of the page's own address, if there is one in it, and puts it on the board as one more of the
 * gardens kept here. The address is then cleared: a reload must not bring back what has since been changed.
 *
 * A link that cannot be read leaves the board as it is, and says why.
 */
export async function openLink(page: Page): Promise<void> {
  const { hash, pathname, search } = page.location;
  if (!holdsGarden(hash)) return;
  page.history.replaceState(null, "", pathname + search);
  useLinkNotice.setState(await opened(hash));
}

async function opened(hash: string): Promise<{ readonly text: string; readonly failed: boolean }> {
  try {
    const file = new File([await textInLink(hash)], say`The garden in the link`, {
      type: "application/json",
    });
    const outcome = await pageGardens().openFromFile(file);
    return outcome.ok
      ? {
          text: say`This garden came with the link you opened. It is kept here as a garden of yours.`,
          failed: false,
        }
      : { text: outcome.reason, failed: true };
  } catch (error) {
    if (!(error instanceof ShareLinkError)) throw error;
    return { text: error.message, failed: true };
  }
}
