import { useEffect, useMemo } from "react";
import { clockTime, instantAt, type Site, say } from "../../../src/index.ts";
import { DaySlider } from "../../moment/DaySlider.tsx";
import { HourSlider } from "../../moment/HourSlider.tsx";
import { useMoment, useToldMinutes } from "../../moment/moment.ts";
import { momentWords } from "../../moment/moment-words.ts";
import { PlayButton } from "../../moment/PlayButton.tsx";
import { runDay } from "../../moment/play-day.ts";
import { dayMarks, sunThen } from "../../moment/sun-then.ts";
import { shownGarden } from "../../store/editor.ts";
import { useEditor } from "../../store/use-editor.ts";
import { CheckField } from "../fields/CheckField.tsx";
import "../../moment/moment.css";
import { Filled, slot } from "../../language/Filled.tsx";

/** The day and the hour whose shadows are drawn on the plan. */
export function MomentSection() {
  const site = useEditor((s) => shownGarden(s).site);
  const shadows = useMoment((s) => s.shadows);
  useRunningDay();
  return (
    <section className="moment" aria-label={say`Shadows at a day and hour`}>
      <div className="moment-head">
        <CheckField
          label={say`Shadows on the plan`}
          checked={shadows}
          onCommit={(on) => useMoment.setState({ shadows: on, playing: false })}
        />
        <PlayButton />
      </div>
      <DaySlider />
      <HourSlider site={site} label={say`Hour`} />
      <MomentWords site={site} />
    </section>
  );
}

/** The moment in a sentence, and by which clock. */
function MomentWords({ site }: { readonly site: Site }) {
  const day = useMoment((s) => s.day);
  const minutes = useToldMinutes();
  const noon = useMemo(() => dayMarks(site, day).noon, [site, day]);
  const bySun = clockTime(site, instantAt(site, day, minutes)).zone === "sun";
  return (
    <>
      <p className="moment-words">{momentWords(day, minutes, noon, sunThen(site, day, minutes))}</p>
      {bySun ? (
        <p className="field-note">
          <Filled
            text={say`Hours are the sun’s own mean time here. ${slot(0)} for those of the clock.`}
            put={[
              <button
                key="zone"
                type="button"
                className="link"
                onClick={() => useEditor.getState().turnTo("site")}
              >{say`Choose a time zone`}</button>,
            ]}
          />
        </p>
      ) : null}
    </>
  );
}

/** Runs the day while it is to play; in leaps for who has asked for less motion. Tells where it was stopped. */
function useRunningDay(): void {
  const playing = useMoment((s) => s.playing);
  useEffect(() => {
    if (!playing) return;
    const stop = runDay(window.matchMedia("(prefers-reduced-motion: reduce)").matches);
    return () => {
      stop();
      const { day, minutes } = useMoment.getState();
      const { site } = shownGarden(useEditor.getState());
      const { noon } = dayMarks(site, day);
      useEditor.getState().say(momentWords(day, minutes, noon, sunThen(site, day, minutes)));
    };
  }, [playing]);
}
