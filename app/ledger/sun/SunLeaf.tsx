import { useEffect, useMemo } from "react";
import { type ItemId, limitsOf, nameOf, type Site, say, sayCount } from "../../../src/index.ts";
import { useSun } from "../../live/sun.ts";
import { startSun } from "../../live/sun-reckoning.ts";
import { openMoment } from "../../moment/moment.ts";
import { shownGarden } from "../../store/editor.ts";
import { useEditor } from "../../store/use-editor.ts";
import { writeMonthDay } from "../site/DateField.tsx";
import { ToSite } from "../ToSite.tsx";
import { BedSunEntry } from "./BedSunEntry.tsx";
import { DayHatches } from "./DayBar.tsx";
import { HoursDrawnField } from "./HoursDrawnField.tsx";
import { MomentSection } from "./MomentSection.tsx";
import { SunCosts } from "./SunCosts.tsx";
import { standingOf } from "./sun-standing.ts";
import "../../style/sun.css";
import { Filled, slot } from "../../language/Filled.tsx";

/** The sun is worked out while this leaf is open, and only then. */
export function SunLeaf() {
  useEffect(() => startSun(useEditor), []);
  useEffect(() => openMoment(), []);
  return <SunFound />;
}

/** How much sun each bed gets, and what takes it. */
export function SunFound() {
  const map = useSun((s) => s.map);
  const problem = useSun((s) => s.problem);
  const dragged = useSun((s) => s.dragged);
  const garden = useEditor(shownGarden);
  const selection = useEditor((s) => s.selection);
  const names = useMemo(() => new Map(garden.items.map((item) => [item.id, nameOf(item)])), [garden.items]);
  const limits = useMemo(() => limitsOf(garden), [garden]);
  if (problem !== null) {
    return <p className="leaf-text">{say`The sun could not be worked out for this garden: ${problem}.`}</p>;
  }
  if (!map) return <p className="leaf-text quiet">{say`Reckoning…`}</p>;

  const beds = map.beds.flatMap((sun) => {
    const bed = garden.items.find(({ id }) => id === sun.id);
    const hours = dragged?.id === sun.id ? dragged.hours : sun.hours;
    return bed?.kind === "bed" ? [{ sun, bed, hours }] : [];
  });
  const enough = beds.filter(({ hours }) => standingOf(hours, limits) === "enough");
  const whole = Math.max(limits.sun, mostHours(map.yard.hours), ...beds.map(({ hours }) => hours));
  const named = (id: ItemId) => names.get(id) ?? null;
  return (
    <div className="sun">
      <p className="sun-head">
        <strong>
          {beds.length === 0
            ? say`No bed yet: drag one out of the barrow.`
            : sayCount(
                beds.length,
                {
                  one: "{{enough}} of {{count}} bed gets enough sun",
                  other: "{{enough}} of {{count}} beds get enough sun",
                },
                { enough: enough.length },
              )}
        </strong>
        <span>{say`Hours of direct sun a day on the mean, ${writeMonthDay(map.season.from)} to ${writeMonthDay(map.season.to)}, ${placeWords(garden.site)}.`}</span>
      </p>
      <MomentSection />
      <div className="hours-drawn">
        <HoursDrawnField />
      </div>
      <DayHatches />
      <ul>
        {beds.map(({ sun, bed, hours }) => (
          <BedSunEntry
            key={sun.id}
            sun={sun}
            bed={bed}
            hours={hours}
            limits={limits}
            selected={selection.has(sun.id)}
            whole={whole}
            nameOf={named}
            onShow={() => useEditor.getState().select([sun.id])}
          />
        ))}
      </ul>
      <SunCosts />
      <p className="sun-notes">{say`The lines on the plan join places with the same hours on bare ground, with no bed in the way. The bars of the months are for the 15th of each, from sunrise to sunset: filled in the sun, pale in shade. Midday is from 10 to 2 by the sun. What a thing takes is what would be gained if that alone were not there.`}</p>
      <p className="sun-notes">
        <Filled
          text={say`Direct sun only, under a clear sky and on a level yard; sunrise and sunset are those of the sun’s middle over a level horizon. Place, season, skyline, north and the hours wanted are set ${slot(0)}.`}
          put={[<ToSite key="site" />]}
        />
      </p>
    </div>
  );
}

/** What open ground gets: as much as there is to be had. */
function mostHours(yard: Float32Array): number {
  let most = 0;
  for (const hours of yard) if (hours > most) most = hours;
  return most;
}

/** "Riverside, 43.6° N", or the latitude alone where the place has no name. */
function placeWords({ place, latitude }: Site): string {
  const degrees = `${Math.round(Math.abs(latitude) * 10) / 10}° ${latitude < 0 ? "S" : "N"}`;
  return place ? `${place}, ${degrees}` : say`at ${degrees}`;
}
