import { Barrow } from "./barrow/Barrow.tsx";
import { Dialogs } from "./dialogs/Dialogs.tsx";
import { Fallback } from "./Fallback.tsx";
import { Ledger } from "./ledger/Ledger.tsx";
import { Plan } from "./plan/Plan.tsx";
import { useEditor } from "./store/use-editor.ts";
import { useShortcuts } from "./topbar/shortcuts.ts";
import { TopBar } from "./topbar/TopBar.tsx";
import { Welcome } from "./topbar/Welcome.tsx";

/** The whole page: top bar, plan, barrow under it, ledger at the right (a sheet from the bottom on a phone). */
export function App() {
  useShortcuts();
  const name = useEditor((s) => s.garden.name);
  return (
    <div className="desk">
      <title>{name ? `${name} · Bedwright` : "Bedwright"}</title>
      <TopBar />
      <main className="plan-area">
        <Welcome />
        <div className="plan-room">
          <Fallback what="The plan">
            <Plan />
          </Fallback>
        </div>
      </main>
      <section className="barrow-area" aria-label="Barrow">
        <Fallback what="The barrow">
          <Barrow />
        </Fallback>
      </section>
      <Ledger />
      <Fallback what="The dialog">
        <Dialogs />
      </Fallback>
    </div>
  );
}
