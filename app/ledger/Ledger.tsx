import { say } from "../../src/index.ts";
import { Announcer } from "./Announcer.tsx";
import { CardArea } from "./card/CardArea.tsx";
import { GrabBar } from "./GrabBar.tsx";
import { Leaf } from "./Leaf.tsx";
import { useLedger } from "./ledger-state.ts";
import { Summary } from "./Summary.tsx";
import { Tabs } from "./Tabs.tsx";

/** The one column at the right: what is wrong and what it costs, the leaf, what is selected. */
export function Ledger() {
  const stop = useLedger((s) => s.stop);
  const cardOpen = useLedger((s) => s.cardOpen);
  return (
    <aside
      className="ledger"
      aria-label={say`Ledger`}
      data-stop={stop}
      data-card={cardOpen ? "open" : "shut"}
    >
      <h2 className="unseen">{say`Ledger`}</h2>
      <GrabBar />
      <Summary />
      <Tabs />
      <Leaf />
      <CardArea />
      <Announcer />
    </aside>
  );
}
