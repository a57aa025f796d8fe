import { say, toldWhenRead, word } from "../../../src/index.ts";
import { type HoursDrawn, useMoment } from "../../moment/moment.ts";
import { type Choice, ChoiceField } from "../fields/ChoiceField.tsx";

const CHOICES: readonly Choice<HoursDrawn>[] = [
  { value: "lines", label: word("Lines of equal hours") },
  { value: "tone", label: word("Lines over a tone") },
  { value: "none", label: word("Nothing") },
];

/** How the hours of the season are drawn on the plan. */
export const HoursDrawnField = () => (
  <ChoiceField
    label={say`Hours on the plan`}
    value={useMoment((s) => s.hoursDrawn)}
    choices={CHOICES.map((choice) => toldWhenRead(choice, "label"))}
    onCommit={(hoursDrawn) => useMoment.setState({ hoursDrawn })}
  />
);
