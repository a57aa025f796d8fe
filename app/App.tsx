import { lazy, Suspense } from "react";
import { plainText, say } from "../src/index.ts";
import { Dialogs } from "./dialogs/Dialogs.tsx";
import { Fallback } from "./Fallback.tsx";
import { KeepingNotices } from "./keeping/KeepingNotices.tsx";
import { Ledger } from "./ledger/Ledger.tsx";
import { UpdateNotice } from "./offline/UpdateNotice.tsx";
import { LinkNotice } from "./sharing/LinkNotice.tsx";
import { useEditor } from "./store/use-editor.ts";
import { useShortcuts } from "./topbar/shortcuts.ts";
import { TopBar } from "./topbar/TopBar.tsx";
import { Welcome } from "./topbar/Welcome.tsx";

/*
 * The drawing board is most of the page's script. The bar and the ledger are painted while it is on its way;
 * `main.tsx` sends for it first of all.
 */
const Plan = lazy(async () => ({ default: (await import("./plan/Plan.tsx")).Plan }));
const Barrow = lazy(async () => ({ default: (await import("./barrow/Barrow.tsx")).Barrow }));

/** The whole page: top bar, plan, barrow under it, ledger at the right (a sheet from the bottom on a phone). */
export function App() {
  useShortcuts();
  const name = plainText(useEditor((s) => s.garden.name));
  return (
    <div className="desk">
      <title>{name ? `${name} · Bedwright` : "Bedwright"}</title>
      <TopBar />
      <main className="plan-area">
        <Welcome />
        <div className="plan-room">
          <div className="notices">
            <KeepingNotices />
            <UpdateNotice />
            <LinkNotice />
          </div>
          <Fallback what={say`The plan`}>
            <Suspense fallback={<p className="board-coming">{say`Laying out the plan…`}</p>}>
              <Plan />
            </Suspense>
          </Fallback>
        </div>
      </main>
      <section className="barrow-area" aria-label={say`Barrow`}>
        <Fallback what={say`The barrow`}>
          <Suspense>
            <Barrow />
          </Suspense>
        </Fallback>
      </section>
      <Ledger />
      <Fallback what={say`The dialog`}>
        <Dialogs />
      </Fallback>
    </div>
  );
}
