import type { Site } from "../../../src/index.ts";
import { useEditor } from "../../store/use-editor.ts";
import { CardSection } from "../card/CardSection.tsx";
import { ChoiceField } from "../fields/ChoiceField.tsx";
import { NumberField } from "../fields/NumberField.tsx";
import { TextField } from "../fields/TextField.tsx";
import { DateField } from "./DateField.tsx";

/** Places are given to the ten-thousandth of a degree, some 11 m: nearer matters to nothing here. */
const PLACE_DECIMALS = 4;

/** Where on earth the yard lies, how it is turned, and its winter. */
export function PlaceSection({ site }: { readonly site: Site }) {
  const commit = useEditor((s) => s.commit);
  const set = (what: string, changes: Partial<Site>) => commit(`Set ${what}`, [{ op: "set-site", changes }]);
  return (
    <CardSection
      title="Place and winter"
      gist={site.place || `${Math.abs(site.latitude)}° ${site.latitude < 0 ? "S" : "N"}`}
    >
      <NumberField
        label="North"
        unit="° from up"
        least={-360}
        most={360}
        value={site.north}
        note="clockwise; the arrow on the plan turns with it"
        onCommit={(north) => set("north", { north })}
      />
      <TextField label="Place" value={site.place} onCommit={(place) => set("the place", { place })} />
      <NumberField
        label="Latitude"
        unit="°"
        least={-90}
        most={90}
        decimals={PLACE_DECIMALS}
        value={site.latitude}
        note="south is below 0"
        onCommit={(latitude) => set("the latitude", { latitude })}
      />
      <NumberField
        label="Longitude"
        unit="°"
        least={-180}
        most={180}
        decimals={PLACE_DECIMALS}
        value={site.longitude}
        note="west is below 0"
        onCommit={(longitude) => set("the longitude", { longitude })}
      />
      <ChoiceField
        label="Winter"
        value={site.winter}
        choices={[
          { value: "freezing", label: "The ground freezes" },
          { value: "mild", label: "Mild" },
        ]}
        onCommit={(winter) => set("the winter", { winter })}
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
