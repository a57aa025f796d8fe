import { memo } from "react";
import {
  cropIdsOf,
  INCH,
  type ItemOf,
  plantsOf,
  type Site,
  say,
  sayCount,
  told,
  type Units,
  word,
} from "../../../../src/index.ts";
import { useMarks } from "../../../plan/hands/marks.ts";
import { shownGarden } from "../../../store/editor.ts";
import { useEditor } from "../../../store/use-editor.ts";
import { OptionalLength } from "../../fields/OptionalLength.tsx";
import { CardSection } from "../CardSection.tsx";
import { setItem } from "../set-item.ts";
import { BedFacts } from "./BedFacts.tsx";
import { boardName } from "./board-choices.ts";
import { CropsField } from "./CropsField.tsx";
import { BottomFields, FillFields, MulchFields } from "./FillFields.tsx";
import { StandingFields, standingGist } from "./StandingFields.tsx";
import { WallFields } from "./WallFields.tsx";
import { deliveryWord, WaterFields } from "./WaterFields.tsx";

type Bed = ItemOf<"bed">;

/** A trellis of six feet and a table's underside at knee height are common sizes to start with. */
const USUAL_TRELLIS = 72 * INCH;
const USUAL_LEGS = 27 * INCH;

const FILL_WORDS: Readonly<Record<Bed["fill"]["way"], string>> = {
  mix: word("mix"),
  layered: word("layered"),
  native: word("own soil"),
};

/** The same but for its place: while a bed is dragged its card has nothing to do. */
function sameButPlace(a: Bed, b: Bed): boolean {
  const keys = Object.keys(a) as (keyof Bed)[];
  return keys.every((key) => key === "at" || key === "turn" || a[key] === b[key]);
}

/** Everything a bed has besides its name, its place and its outline. */
export const BedFields = memo(BedFieldsInner, (before, now) => sameButPlace(before.bed, now.bed));

function BedFieldsInner({ bed }: { readonly bed: Bed }) {
  const units = useEditor((s) => shownGarden(s).units);
  const site = useEditor((s) => shownGarden(s).site);
  const held = useMarks(({ patch }) => patch?.id === bed.id);
  return (
    <>
      <CardSection title={say`Wall`} gist={wallGist(bed, units)}>
        <WallFields bed={bed} units={units} />
      </CardSection>
      <CardSection
        title={say`Bottom and fill`}
        gist={`${bottomGist(bed)}, ${told(FILL_WORDS[bed.fill.way])}`}
      >
        <BottomFields bed={bed} />
        <FillFields bed={bed} />
        <MulchFields bed={bed} />
      </CardSection>
      <CardSection title={say`Standing and stage`} gist={standingGist(bed)}>
        <StandingFields bed={bed} />
      </CardSection>
      <CardSection title={say`Crops`} gist={cropsGist(bed, site)} wanted={held}>
        <CropsField bed={bed} units={units} />
        <OptionalLength
          has={say`Trellis`}
          label={say`Trellis above the soil`}
          value={bed.trellis}
          usual={USUAL_TRELLIS}
          onCommit={(trellis) => setItem(bed, say`trellis`, { trellis })}
        />
        <OptionalLength
          has={say`On legs, as a table`}
          label={say`Ground to the underside`}
          value={bed.legs}
          usual={USUAL_LEGS}
          onCommit={(legs) => setItem(bed, say`legs`, { legs })}
        />
      </CardSection>
      <CardSection title={say`Water`} gist={deliveryWord(bed.watering)}>
        <WaterFields bed={bed} units={units} />
      </CardSection>
      <CardSection title={say`What follows`} open>
        <BedFacts bed={bed} units={units} />
      </CardSection>
    </>
  );
}

function wallGist({ wall }: Bed, units: Units): string {
  switch (wall.made) {
    case "boards":
      return `${boardName(wall.board, units)}, ${courses(wall.courses)}`;
    case "masonry":
      return say`masonry, ${courses(wall.courses)}`;
    case "metal":
      return say`metal`;
    case "fabric":
      return say`fabric`;
    case "mound":
      return say`mound`;
  }
}

const courses = (count: number): string =>
  sayCount(count, { one: "{{count}} course", other: "{{count}} courses" });

function bottomGist({ bottom }: Bed): string {
  if (bottom.mesh) return bottom.liner ? say`mesh and liner` : say`mesh`;
  return bottom.liner ? say`liner` : say`open`;
}

function cropsGist(bed: Bed, site: Site): string {
  const { length } = cropIdsOf(bed);
  if (length === 0) return say`none yet`;
  const plants = plantsOf(bed, site).reduce((sum, { count }) => sum + count, 0);
  const crops = sayCount(length, { one: "{{count}} crop", other: "{{count}} crops" });
  return `${crops}, ${sayCount(plants, { one: "{{count}} plant", other: "{{count}} plants" })}`;
}
