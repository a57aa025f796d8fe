import { type Site, say } from "../../../src/index.ts";
import { CheckField } from "../fields/CheckField.tsx";
import { ChoiceField } from "../fields/ChoiceField.tsx";
import { NumberField } from "../fields/NumberField.tsx";
import { RatioField } from "../fields/RatioField.tsx";
import { toldChoices } from "../fields/told-choices.ts";
import { BURROWING, COVERS } from "./ground-choices.ts";

type Ground = Site["ground"];

interface Props {
  readonly ground: Ground;
  /** @param what names the change in the history */
  readonly onSet: (what: string, changes: Partial<Ground>) => void;
}

/** What is known of a piece of ground: of a patch, or of the yard at large. */
export const GroundFacts = ({ ground, onSet }: Props) => (
  <>
    <ChoiceField
      label={say`Underfoot`}
      value={ground.cover}
      choices={toldChoices(COVERS)}
      onCommit={(cover) => onSet(say`what lies underfoot`, { cover })}
    />
    <ChoiceField
      label={say`Burrowing animals`}
      value={ground.burrowing}
      choices={toldChoices(BURROWING)}
      onCommit={(burrowing) => onSet(say`burrowing animals`, { burrowing })}
    />
    <CheckField
      label={say`Contaminated: lead, fuel, old fill`}
      checked={ground.contaminated}
      onCommit={(contaminated) => onSet(say`contamination`, { contaminated })}
    />
    <RatioField label={say`Slope`} value={ground.slope} onCommit={(slope) => onSet(say`slope`, { slope })} />
    <NumberField
      label={say`Falls towards`}
      unit={say`° from up`}
      value={ground.falls}
      least={-360}
      most={360}
      onCommit={(falls) => onSet(say`fall`, { falls })}
    />
  </>
);
