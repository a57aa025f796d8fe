import { type HoursDrawn, useMoment } from "../../moment/moment.ts";
import { type Choice, ChoiceField } from "../fields/ChoiceField.tsx";

const CHOICES: readonly Choice<HoursDrawn>[] = [
  { value: "lines", label: "Lines of equal hours" },
  { value: "tone", label: "Lines over a tone" },
  { value: "none", label: "Nothing" },
];

/** How the hours of the season are drawn on the plan. */
export const HoursDrawnField = () => (
  <ChoiceField
    label="Hours on the plan"
    value={useMoment((s) => s.hoursDrawn)}
    choices={CHOICES}
    onCommit={(hoursDrawn) => useMoment.setState({ hoursDrawn })}
  />
);
