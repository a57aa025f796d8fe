import { type ItemOf, plantsOf, say, type Units } from "../../../../src/index.ts";
import { shownGarden } from "../../../store/editor.ts";
import { useEditor } from "../../../store/use-editor.ts";
import { ChoiceField } from "../../fields/ChoiceField.tsx";
import { setItem } from "../set-item.ts";
import { AddCrop } from "./AddCrop.tsx";
import { CropYear } from "./CropYear.tsx";
import { LastYearField } from "./LastYearField.tsx";
import { PlantingEntry } from "./PlantingEntry.tsx";
import "./crops.css";

interface Props {
  readonly bed: ItemOf<"bed">;
  readonly units: Units;
}

/** What grows in a bed over the year: each planting, when and where it stands, what stood there last year, and the winter. */
export function CropsField({ bed, units }: Props) {
  const site = useEditor((s) => shownGarden(s).site);
  const patches = plantsOf(bed, site);
  return (
    <div className="crops wide">
      {patches.length > 0 ? <CropYear patches={patches} site={site} /> : null}
      <ol className="plantings" aria-label={say`Crops in this bed`}>
        {patches.map((patch) => (
          <PlantingEntry
            key={`${patch.index} ${patch.crop}`}
            bed={bed}
            patch={patch}
            site={site}
            units={units}
          />
        ))}
      </ol>
      <AddCrop bed={bed} units={units} />
      <LastYearField bed={bed} />
      <ChoiceField
        label={say`In winter`}
        value={bed.winter}
        choices={[
          { value: "cover-crop", label: say`A cover crop` },
          { value: "mulch", label: say`Mulch` },
          { value: "sheet", label: say`A sheet over it` },
          { value: "nothing", label: say`Nothing` },
        ]}
        onCommit={(winter) => setItem(bed, say`winter`, { winter })}
      />
    </div>
  );
}
