import { useMoment, useToldMinutes } from "../../moment/moment.ts";
import { sunThen } from "../../moment/sun-then.ts";
import { shownGarden } from "../../store/editor.ts";
import { useEditor } from "../../store/use-editor.ts";

/** Beyond the letter of the north arrow, so that a sun in the north does not cover it. */
const FAR = 36;

/** Where the sun stands at the moment shown, as a disc round the north arrow; hollow behind the skyline, none by night. */
export function SunMark() {
  const shown = useMoment((s) => s.open && s.shadows);
  const day = useMoment((s) => s.day);
  const minutes = useToldMinutes();
  const site = useEditor((s) => shownGarden(s).site);
  if (!shown) return null;
  const { azimuth, shines } = sunThen(site, day, minutes);
  if (shines === "down") return null;
  return (
    <g className="north-sun" data-shines={shines} transform={`rotate(${azimuth + site.north})`}>
      <path d={`M0 ${-FAR}V-8`} />
      <circle cy={-FAR} r="4.5" />
    </g>
  );
}
