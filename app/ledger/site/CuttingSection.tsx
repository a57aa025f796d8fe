import type { Garden } from "../../../src/index.ts";
import { useEditor } from "../../store/use-editor.ts";
import { CardSection } from "../card/CardSection.tsx";
import { ChoiceField } from "../fields/ChoiceField.tsx";
import { LengthField } from "../fields/LengthField.tsx";
import { OnHandBoards } from "./OnHandBoards.tsx";
import { OwnBoards } from "./OwnBoards.tsx";
import { StockField } from "./StockField.tsx";

type Cutting = Garden["cutting"];

/** What boards there are, how they are sawn, and what the cut plan aims at. */
export function CuttingSection({ garden }: { readonly garden: Garden }) {
  const { cutting, units } = garden;
  const set = (what: string, changes: Partial<Cutting>) =>
    useEditor
      .getState()
      .commit(`Set ${what}`, [{ op: "set-garden", changes: { cutting: { ...cutting, ...changes } } }]);

  return (
    <CardSection title="Boards and saw" gist={gistOf(cutting)}>
      <LengthField
        label="The saw takes"
        may="zero"
        value={cutting.kerf}
        note="with each cut"
        onCommit={(kerf) => set("the saw’s cut", { kerf })}
      />
      <LengthField
        label="Offcuts kept from"
        may="zero"
        value={cutting.worthKeeping}
        note="shorter ones are waste"
        onCommit={(worthKeeping) => set("the offcut worth keeping", { worthKeeping })}
      />
      <ChoiceField
        label="The cut plan aims at"
        value={cutting.aim}
        choices={[
          { value: "least-cost", label: "Least cost" },
          { value: "least-waste", label: "Least waste" },
        ]}
        note="of all the boards together"
        onCommit={(aim) => set("the aim of the cut plan", { aim })}
      />
      <div className="wide">
        <StockField
          lengths={cutting.stockLengths}
          units={units}
          onCommit={(stockLengths) => set("board lengths", { stockLengths })}
        />
      </div>
      <OnHandBoards
        cutting={cutting}
        units={units}
        onCommit={(onHand) => set("boards at home", { onHand })}
      />
      <OwnBoards
        cutting={cutting}
        units={units}
        onCommit={(ownBoards) => set("own board sizes", { ownBoards })}
      />
    </CardSection>
  );
}

function gistOf({ aim, onHand }: Cutting): string {
  const atHome = onHand.reduce((sum, { count }) => sum + count, 0);
  return `${aim === "least-cost" ? "least cost" : "least waste"}${atHome > 0 ? `, ${atHome} at home` : ""}`;
}
