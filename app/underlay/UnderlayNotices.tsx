import { openDialog } from "../dialogs/open-dialog.ts";
import { Notice } from "../keeping/Notice.tsx";
import { useEditor } from "../store/use-editor.ts";
import { setUnderlay } from "./set-underlay.ts";
import { useShownPicture } from "./shown-picture.ts";
import { tellTrouble, useUnderlayTrouble } from "./trouble.ts";

/** What could not be done about the picture beneath the plan; and that it can be dragged, for as long as it can. */
export function UnderlayNotices() {
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
      aria-label="Dismiss the notice about the picture"
    >
      Got it
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
        Set its scale
      </button>
      <button
        type="button"
        className="button main"
        onClick={() => setUnderlay("Lock the picture beneath", { ...underlay, locked: true })}
        aria-label="Lock the picture beneath the plan"
      >
        Lock it
      </button>
    </>
  );
  return (
    <Notice doings={doings}>Drag the picture into place. Turn, strength and the rest are under Site.</Notice>
  );
}
