import { openDialog } from "../dialogs/open-dialog.ts";
import { GardenName } from "./GardenName.tsx";
import { KeptLine } from "./KeptLine.tsx";
import { LampButton } from "./LampButton.tsx";
import { SheetButton } from "./SheetButton.tsx";
import { UndoRedo } from "./UndoRedo.tsx";
import { UnitsToggle } from "./UnitsToggle.tsx";
import { ZoomBar } from "./ZoomBar.tsx";

/** The garden's name and what concerns the page as a whole. */
export function TopBar() {
  return (
    <header className="topbar">
      <h1 className="wordmark">
        Bed<span>w</span>right
      </h1>
      <div className="topbar-garden">
        <GardenName />
        <button type="button" className="button" onClick={() => openDialog("gardens")}>
          Gardens
        </button>
        <KeptLine />
      </div>
      <div className="topbar-tools">
        <UndoRedo />
        <UnitsToggle />
        <ZoomBar />
        <LampButton />
        <button
          type="button"
          className="button help-button"
          onClick={() => openDialog("help")}
          title="Keys and how to start (?)"
        >
          <span aria-hidden="true">?</span>
          <span className="unseen">Help</span>
        </button>
        <SheetButton />
      </div>
    </header>
  );
}
