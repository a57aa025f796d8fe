import { Barrow } from "./barrow/Barrow.tsx";
import { Ledger } from "./ledger/Ledger.tsx";
import { Plan } from "./plan/Plan.tsx";
import { TopBar } from "./topbar/TopBar.tsx";

/** The whole page: top bar, plan, barrow under it, ledger at the right (a sheet from the bottom on a phone). */
export function App() {
  return (
    <div className="desk">
      <TopBar />
      <main className="plan-area">
        <Plan />
      </main>
      <div className="barrow-area">
        <Barrow />
      </div>
      <Ledger />
    </div>
  );
}
