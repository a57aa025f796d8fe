import { type Site, SUN_PLACES, SUN_PLACES_SOURCE } from "../../../src/index.ts";
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
  const set: SetSite = (what, changes) => commit(`Set ${what}`, [{ op: "set-site", changes }]);
  return (
    <CardSection title="Place and winter" gist={site.place || writeAngle(site.latitude, LATITUDE)}>
      <PlaceFields site={site} set={set} />
      <ChoiceField
        label="Winter"
        value={site.winter}
        choices={[
          { value: "freezing", label: "The ground freezes" },
          { value: "mild", label: "Mild" },
        ]}
        onCommit={(winter) => set("the winter", { winter })}
      />
      <ChoiceField
        label="Wind at the yard"
        value={site.wind}
        choices={[
          { value: "sheltered", label: "Sheltered" },
          { value: "open", label: "Open" },
          { value: "windy", label: "Windy" },
        ]}
        note="How it comes at tall crops and what they grow up"
        onCommit={(wind) => set("the wind", { wind })}
      />
      <DateField
        label="Mean last frost of spring"
        value={site.lastFrost}
        onCommit={(lastFrost) => set("the last frost", { lastFrost })}
      />
      <DateField
        label="Mean first frost of autumn"
        value={site.firstFrost}
        onCommit={(firstFrost) => set("the first frost", { firstFrost })}
      />
    </CardSection>
  );
}

const PlaceFields = ({ site, set }: { readonly site: Site; readonly set: SetSite }) => (
  <>
    <TownField site={site} set={set} />
    <TextField label="Place" value={site.place} onCommit={(place) => set("the place", { place })} />
    <TypedField
      label="Latitude"
      value={{ latitude: site.latitude, longitude: site.longitude }}
      write={({ latitude }) => writeAngle(latitude, LATITUDE)}
      read={(text) => readPlace(text, site.longitude)}
      same={(a, b) => a.latitude === b.latitude && a.longitude === b.longitude}
      note="43.6 N or 43° 36′ N; south also as -43.6. Both at once: 43.6 N, 116.2 W"
      onCommit={(place) => set("the latitude", place)}
    />
    <TypedField
      label="Longitude"
      value={site.longitude}
      write={(longitude) => writeAngle(longitude, LONGITUDE)}
      read={(text) => readAngle(text, LONGITUDE)}
      note="116.2 W; west also as -116.2"
      onCommit={(longitude) => set("the longitude", { longitude })}
    />
    <ZoneField timeZone={site.timeZone} onCommit={(timeZone) => set("the time zone", { timeZone })} />
  </>
);

const TOWNS = SUN_PLACES.toSorted((a, b) => a.name.localeCompare(b.name)).map(
  ({ name, country, latitude }) => ({
    value: name,
    label: `${name}, ${country}, ${writeAngle(latitude, LATITUDE)}`,
  }),
);
const NONE = { value: "", label: "None of the list" };

/** A town nearby brings its latitude, longitude and clock; a name of one's own for the place is kept. */
function TownField({ site, set }: { readonly site: Site; readonly set: SetSite }) {
  const here = SUN_PLACES.find(
    ({ latitude, longitude }) => latitude === site.latitude && longitude === site.longitude,
  );
  const choose = (name: string) => {
    const town = SUN_PLACES.find((place) => place.name === name);
    if (!town) return;
    const { latitude, longitude, timeZone } = town;
    const ownName = site.place !== "" && !SUN_PLACES.some((place) => place.name === site.place);
    set("the place", { latitude, longitude, timeZone, ...(ownName ? {} : { place: name }) });
  };
  return (
    <div className="wide">
      <ChoiceField
        label="A town nearby"
        value={here?.name ?? ""}
        choices={[NONE, ...TOWNS]}
        note={`To begin with; ${SUN_PLACES_SOURCE.text}. Nothing is looked up on the network.`}
        onCommit={choose}
      />
    </div>
  );
}
