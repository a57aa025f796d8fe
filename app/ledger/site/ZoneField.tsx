import { say } from "../../../src/index.ts";
import { ChoiceField } from "../fields/ChoiceField.tsx";

interface Props {
  /** IANA name; null for the sun's own mean time. */
  readonly timeZone: string | null;
  readonly onCommit: (timeZone: string | null) => void;
}

/** All zones that this machine has a clock of. */
const ZONES = Intl.supportedValuesOf("timeZone").map((zone) => ({
  value: zone,
  label: zone.replaceAll("_", " "),
}));

/** The clock by which hours of shade are told, summer time and all. */
export const ZoneField = ({ timeZone, onCommit }: Props) => (
  <div className="wide">
    <ChoiceField
      label={say`Time zone`}
      value={timeZone ?? ""}
      choices={[{ value: "", label: say`The sun’s own time` }, ...ZONES]}
      note={say`the clock by which hours of shade are told, with its summer time`}
      onCommit={(zone) => onCommit(zone === "" ? null : zone)}
    />
  </div>
);
