import { say } from "../../../src/index.ts";
import { HourSlider } from "../../moment/HourSlider.tsx";
import { useMoment, useToldMinutes } from "../../moment/moment.ts";
import { timeWords } from "../../moment/moment-words.ts";
import { PlayButton } from "../../moment/PlayButton.tsx";
import { dayMarks } from "../../moment/sun-then.ts";
import { shortDay } from "../../moment/year-days.ts";
import { shownGarden } from "../../store/editor.ts";
import { useEditor } from "../../store/use-editor.ts";
import "../../moment/moment.css";

/** The hour of the shadows, small at the foot of the plan while shadows are drawn. */
export function MomentBar() {
  const shown = useMoment((s) => s.open && s.shadows);
  return shown ? <Bar /> : null;
}

function Bar() {
  const site = useEditor((s) => shownGarden(s).site);
  const day = useMoment((s) => s.day);
  const minutes = useToldMinutes();
  return (
    <fieldset className="moment-bar">
      <legend className="unseen">{say`Shadows on the plan`}</legend>
      <PlayButton bare />
      <HourSlider site={site} label={say`Hour of the shadows`} bare />
      <span className="moment-now">
        <strong>{timeWords(minutes, dayMarks(site, day).noon)}</strong> {shortDay(day)}
      </span>
    </fieldset>
  );
}
