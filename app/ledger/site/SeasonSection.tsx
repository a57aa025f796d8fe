import { growingSeason, type Site, say, sayCount, seasonOf } from "../../../src/index.ts";
import { useEditor } from "../../store/use-editor.ts";
import { CardSection } from "../card/CardSection.tsx";
import { ChoiceField } from "../fields/ChoiceField.tsx";
import { TypedField } from "../fields/TypedField.tsx";
import { readMonthDay, writeMonthDay } from "./DateField.tsx";
import { SkylineFields } from "./SkylineFields.tsx";

/** What sun hours are counted over: the days of the year, and the horizon that the sun has to come over. */
export function SeasonSection({ site }: { readonly site: Site }) {
  const { from, to } = seasonOf(site);
  const points = site.skyline.length;
  const horizon =
    points === 0
      ? say`level horizon`
      : sayCount(points, { one: "{{count}} point of skyline", other: "{{count}} points of skyline" });
  return (
    <CardSection title={say`Season and skyline`} gist={`${days(from, to)}, ${horizon}`}>
      <SeasonFields site={site} />
      <SkylineFields site={site} />
    </CardSection>
  );
}

const days = (from: string, to: string): string => say`${writeMonthDay(from)} to ${writeMonthDay(to)}`;

function SeasonFields({ site }: { readonly site: Site }) {
  const commit = useEditor((s) => s.commit);
  const usual = growingSeason(site.latitude);
  const set = (season: Site["season"]) =>
    commit(say`Set the season`, [{ op: "set-site", changes: { season } }]);
  return (
    <>
      <div className="wide">
        <ChoiceField
          label={say`Sun hours are averaged over`}
          value={site.season ? "own" : "growing"}
          choices={[
            { value: "growing", label: say`The growing season, ${days(usual.from, usual.to)}` },
            { value: "own", label: say`Days of your own` },
          ]}
          onCommit={(choice) => set(choice === "own" ? usual : null)}
        />
      </div>
      {site.season ? <OwnDays season={site.season} onCommit={set} /> : null}
    </>
  );
}

interface OwnProps {
  readonly season: NonNullable<Site["season"]>;
  readonly onCommit: (season: NonNullable<Site["season"]>) => void;
}

const OwnDays = ({ season, onCommit }: OwnProps) => (
  <>
    <TypedField
      label={say`First day`}
      value={season.from}
      write={writeMonthDay}
      read={readDay}
      onCommit={(from) => onCommit({ ...season, from })}
    />
    <TypedField
      label={say`Last day`}
      value={season.to}
      write={writeMonthDay}
      read={readDay}
      note={season.from > season.to ? say`over new year` : undefined}
      onCommit={(to) => onCommit({ ...season, to })}
    />
  </>
);

function readDay(text: string): string {
  const day = readMonthDay(text);
  if (day === null) throw new RangeError(say`Type a day such as 26 Apr.`);
  return day;
}
