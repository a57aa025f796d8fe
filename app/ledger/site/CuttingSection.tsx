import { type Garden, say } from "../../../src/index.ts";
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
      .commit(say`Set ${what}`, [{ op: "set-garden", changes: { cutting: { ...cutting, ...changes } } }]);

  return (
    <CardSection title={say`Boards and saw`} gist={gistOf(cutting)}>
      <LengthField
        label={say`The saw takes`}
        may="zero"
        value={cutting.kerf}
        note={say`with each cut`}
        onCommit={(kerf) => set(say`the saw’s cut`, { kerf })}
      />
      <LengthField
        label={say`Offcuts kept from`}
        may="zero"
        value={cutting.worthKeeping}
        note={say`shorter ones are waste`}
        onCommit={(worthKeeping) => set(say`the offcut worth keeping`, { worthKeeping })}
      />
      <ChoiceField
        label={say`The cut plan aims at`}
        value={cutting.aim}
        choices={[
          { value: "least-cost", label: say`Least cost` },
          { value: "least-waste", label: say`Least waste` },
        ]}
        note={say`of all the boards together`}
        onCommit={(aim) => set(say`the aim of the cut plan`, { aim })}
      />
      <div className="wide">
        <StockField
          lengths={cutting.stockLengths}
          units={units}
          onCommit={(stockLengths) => set(say`board lengths`, { stockLengths })}
        />
      </div>
      <OnHandBoards
        cutting={cutting}
        units={units}
        onCommit={(onHand) => set(say`boards at home`, { onHand })}
      />
      <OwnBoards
        cutting={cutting}
        units={units}
        onCommit={(ownBoards) => set(say`own board sizes`, { ownBoards })}
      />
    </CardSection>
  );
}

function gistOf({ aim, onHand }: Cutting): string {
  const atHome = onHand.reduce((sum, { count }) => sum + count, 0);
  const aimed = aim === "least-cost" ? say`least cost` : say`least waste`;
  return atHome > 0 ? say`${aimed}, ${atHome} at home` : aimed;
}
