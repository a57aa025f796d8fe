import { language, type Site, SUN_PLACES, SUN_PLACES_SOURCE, say, told } from "../../../src/index.ts";
import { useEditor } from "../../store/use-editor.ts";
import { CardSection } from "../card/CardSection.tsx";
import { ChoiceField } from "../fields/ChoiceField.tsx";
import { TextField } from "../fields/TextField.tsx";
import { TypedField } from "../fields/TypedField.tsx";
import { DateField } from "./DateField.tsx";
import { LATITUDE, LONGITUDE, readAngle, readPlace, writeAngle } from "./read-angle.ts";
import { ZoneField } from "./ZoneField.tsx";

type SetSite = (what: string, changes: Partial<Site>) => void;

/** Where on earth the yard lies, by which clock its hours are told, and its winter. */
export function PlaceSection({ site }: { readonly site: Site }) {
  const commit = useEditor((s) => s.commit);
  const set: SetSite = (what, changes) => commit(say`Set ${what}`, [{ op: "set-site", changes }]);
  return (
    <CardSection title={say`Place and winter`} gist={site.place || writeAngle(site.latitude, LATITUDE)}>
      <PlaceFields site={site} set={set} />
      <ChoiceField
        label={say`Winter`}
        value={site.winter}
        choices={[
          { value: "freezing", label: say`The ground freezes` },
          { value: "mild", label: say`Mild` },
        ]}
        onCommit={(winter) => set(say`the winter`, { winter })}
      />
      <ChoiceField
        label={say`Wind at the yard`}
        value={site.wind}
        choices={[
          { value: "sheltered", label: say`Sheltered` },
          { value: "open", label: say`In the open` },
          { value: "windy", label: say`Windy` },
        ]}
        note={say`How it comes at tall crops and what they grow up`}
        onCommit={(wind) => set(say`the wind`, { wind })}
      />
      <DateField
        label={say`Mean last frost of spring`}
        value={site.lastFrost}
        onCommit={(lastFrost) => set(say`the last frost`, { lastFrost })}
      />
      <DateField
        label={say`Mean first frost of autumn`}
        value={site.firstFrost}
        onCommit={(firstFrost) => set(say`the first frost`, { firstFrost })}
      />
    </CardSection>
  );
}

const PlaceFields = ({ site, set }: { readonly site: Site; readonly set: SetSite }) => (
  <>
    <TownField site={site} set={set} />
    <TextField label={say`Place`} value={site.place} onCommit={(place) => set(say`the place`, { place })} />
    <TypedField
      label={say`Latitude`}
      value={{ latitude: site.latitude, longitude: site.longitude }}
      write={({ latitude }) => writeAngle(latitude, LATITUDE)}
      read={(text) => readPlace(text, site.longitude)}
      same={(a, b) => a.latitude === b.latitude && a.longitude === b.longitude}
      note={say`43.6 N or 43° 36′ N; south also as -43.6. Both at once: 43.6 N, 116.2 W`}
      onCommit={(place) => set(say`the latitude`, place)}
    />
    <TypedField
      label={say`Longitude`}
      value={site.longitude}
      write={(longitude) => writeAngle(longitude, LONGITUDE)}
      read={(text) => readAngle(text, LONGITUDE)}
      note={say`116.2 W; west also as -116.2`}
      onCommit={(longitude) => set(say`the longitude`, { longitude })}
    />
    <ZoneField timeZone={site.timeZone} onCommit={(timeZone) => set(say`the time zone`, { timeZone })} />
  </>
);

const towns = () => [
  { value: "", label: say`None of the list` },
  ...SUN_PLACES.map(({ name, country, latitude }) => ({
    value: name,
    label: `${told(name)}, ${told(country)}, ${writeAngle(latitude, LATITUDE)}`,
  })).sort((a, b) => a.label.localeCompare(b.label, language())),
];

/** A town nearby brings its latitude, longitude and clock; a name of one's own for the place is kept. */
function TownField({ site, set }: { readonly site: Site; readonly set: SetSite }) {
  const here = SUN_PLACES.find(
    ({ latitude, longitude }) => latitude === site.latitude && longitude === site.longitude,
  );
  const choose = (name: string) => {
    const town = SUN_PLACES.find((place) => place.name === name);
    if (!town) return;
    const { latitude, longitude, timeZone } = town;
    const ownName =
      site.place !== "" && !SUN_PLACES.some((place) => [place.name, told(place.name)].includes(site.place));
    set(say`the place`, { latitude, longitude, timeZone, ...(ownName ? {} : { place: told(name) }) });
  };
  return (
    <div className="wide">
      <ChoiceField
        label={say`A town nearby`}
        value={here?.name ?? ""}
        choices={towns()}
        note={say`To begin with; ${told(SUN_PLACES_SOURCE.text)}. Nothing is looked up on the network.`}
        onCommit={choose}
      />
    </div>
  );
}
