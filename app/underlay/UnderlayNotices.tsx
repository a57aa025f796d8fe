import { say } from "../../src/index.ts";
import { openDialog } from "../dialogs/open-dialog.ts";
import { Notice } from "../keeping/Notice.tsx";
import { shownGarden } from "../store/editor.ts";
import { useEditor } from "../store/use-editor.ts";
import { setUnderlay } from "./set-underlay.ts";
import { useLoadedPicture, useShownPicture } from "./shown-picture.ts";
import { tellTrouble, useUnderlayTrouble } from "./trouble.ts";

/**
 * What could not be done about the picture beneath the plan; and that it can be dragged, for as long as it can. It has the
 * picture loaded too: the plan itself is not there while the ledger covers all of a phone.
 */
export function UnderlayNotices() {
  useLoadedPicture(useEditor((state) => shownGarden(state).underlay?.picture ?? null));
  return (
    <>
      <TroubleNotice />
      <LooseNotice />
    </>
  );
}

function TroubleNotice() {
  const text = useUnderlayTrouble((trouble) => trouble.text);
  if (text === null) return null;
  const dismiss = (
    <button
      type="button"
      className="button"
      onClick={() => tellTrouble(null)}
      aria-label={say`Got it: dismiss the notice about the picture`}
    >
      {say`Got it`}
    </button>
  );
  return (
    <Notice urgent doings={dismiss}>
      {text}
    </Notice>
  );
}

function LooseNotice() {
  const underlay = useEditor((state) => state.garden.underlay);
  const locked = useEditor((state) => state.locked);
  const shown = useShownPicture((picture) => picture.state);
  if (!underlay || underlay.locked || locked || shown !== "shown") return null;
  const doings = (
    <>
      <button type="button" className="button" onClick={() => openDialog("underlay")}>
        {say`Set its scale`}
      </button>
      <button
        type="button"
        className="button main"
        onClick={() => setUnderlay(say`Lock the picture beneath`, { ...underlay, locked: true })}
        aria-label={say`Lock the picture beneath the plan`}
      >
        {say`Lock it`}
      </button>
    </>
  );
  return (
    <Notice doings={doings}>{say`Drag the picture into place. All else about it is under Site.`}</Notice>
  );
}
