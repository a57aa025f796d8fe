import type { Site } from "../../../src/index.ts";
import { CheckField } from "../fields/CheckField.tsx";
import { ChoiceField } from "../fields/ChoiceField.tsx";
import { NumberField } from "../fields/NumberField.tsx";
import { RatioField } from "../fields/RatioField.tsx";
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
      label="Underfoot"
      value={ground.cover}
      choices={COVERS}
      onCommit={(cover) => onSet("what lies underfoot", { cover })}
    />
    <ChoiceField
      label="Burrowing animals"
      value={ground.burrowing}
      choices={BURROWING}
      onCommit={(burrowing) => onSet("burrowing animals", { burrowing })}
    />
    <CheckField
      label="Contaminated: lead, fuel, old fill"
      checked={ground.contaminated}
      onCommit={(contaminated) => onSet("contamination", { contaminated })}
    />
    <RatioField label="Slope" value={ground.slope} onCommit={(slope) => onSet("slope", { slope })} />
    <NumberField
      label="Falls towards"
      unit="° from up"
      value={ground.falls}
      least={-360}
      most={360}
      onCommit={(falls) => onSet("fall", { falls })}
    />
  </>
);
