import { say } from "../../src/index.ts";
import { dismissLinkNotice, useLinkNotice } from "./open-link.ts";

/** Says what became of the link the page was opened with, until it has been read. */
export function LinkNotice() {
  const { text, failed } = useLinkNotice();
  if (text === null) return null;
  return (
    <p className="welcome" role={failed ? "alert" : "status"}>
      {text}
      <button
        type="button"
        className="button"
        onClick={dismissLinkNotice}
        aria-label={say`Got it: dismiss this notice`}
      >
        {say`Got it`}
      </button>
    </p>
  );
}
