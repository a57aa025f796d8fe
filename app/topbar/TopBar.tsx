import { say } from "../../src/index.ts";
import { openDialog } from "../dialogs/open-dialog.ts";
import { GardenName } from "./GardenName.tsx";
import { KeptLine } from "./KeptLine.tsx";
import { LampButton } from "./LampButton.tsx";
import { SheetButton } from "./SheetButton.tsx";
import { UndoRedo } from "./UndoRedo.tsx";
import { UnitsToggle } from "./UnitsToggle.tsx";
import { ZoomBar } from "./ZoomBar.tsx";

/** A name is the same in every language. */
const NAME = ["Bed", "w", "right"] as const;

/** The garden's name and what concerns the page as a whole. */
export function TopBar() {
  return (
    <header className="topbar">
      <h1 className="wordmark">
        {NAME[0]}
        <span>{NAME[1]}</span>
        {NAME[2]}
      </h1>
      <div className="topbar-garden">
        <GardenName />
        <button type="button" className="button" onClick={() => openDialog("gardens")}>{say`Gardens`}</button>
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
          title={say`Keys and how to start (?)`}
        >
          <span aria-hidden="true">?</span>
          <span className="unseen">{say`Help`}</span>
        </button>
        <SheetButton />
      </div>
    </header>
  );
}
