import { Barrow } from "./barrow/Barrow.tsx";
import { Dialogs } from "./dialogs/Dialogs.tsx";
import { Ledger } from "./ledger/Ledger.tsx";
import { Plan } from "./plan/Plan.tsx";
import { useShortcuts } from "./topbar/shortcuts.ts";
import { TopBar } from "./topbar/TopBar.tsx";
import { Welcome } from "./topbar/Welcome.tsx";

/** The whole page: top bar, plan, barrow under it, ledger at the right (a sheet from the bottom on a phone). */
export function App() {
  useShortcuts();
  return (
    <div className="desk">
      <TopBar />
      <main className="plan-area">
        <Welcome />
        <div className="plan-room">
          <Plan />
        </div>
      </main>
      <section className="barrow-area" aria-label="Barrow">
        <Barrow />
      </section>
      <Ledger />
      <Dialogs />
    </div>
  );
}
