import { type Op, say } from "../../../src/index.ts";
import { ClimateSection } from "../../climate/ClimateSection.tsx";
import { BoardField } from "../../device/BoardField.tsx";
import { SingleKeysField } from "../../device/SingleKeysField.tsx";
import { LanguageField } from "../../language/LanguageField.tsx";
import { useEditor } from "../../store/use-editor.ts";
import { UnderlaySection } from "../../underlay/UnderlaySection.tsx";
import { CardSection } from "../card/CardSection.tsx";
import { GroundFacts } from "../card/GroundFacts.tsx";
import { PolygonSides } from "../card/PolygonSides.tsx";
import { BuyingSection } from "./BuyingSection.tsx";
import { CuttingSection } from "./CuttingSection.tsx";
import { GardenerFields } from "./GardenerFields.tsx";
import { LimitsSection } from "./LimitsSection.tsx";
import { NorthSection } from "./NorthSection.tsx";
import { PlaceSection } from "./PlaceSection.tsx";
import { SeasonSection } from "./SeasonSection.tsx";

/** What is given: the yard, the place, the people, what is on sale, and the limits the plan is held to. */
export function SiteLeaf() {
  const garden = useEditor((s) => s.garden);
  const commit = useEditor((s) => s.commit);
  const set = (what: string, op: Op) => commit(say`Set ${what}`, [op]);

  return (
    <>
      <CardSection title={say`The yard`} gist={say`${garden.yard.length} sides`} open>
        <PolygonSides
          points={garden.yard}
          onCommit={(yard) => set(say`the yard’s outline`, { op: "set-yard", yard })}
        />
      </CardSection>
      <CardSection title={say`Who gardens here`} open>
        <GardenerFields gardener={garden.gardener} />
      </CardSection>
      <CardSection title={say`Ground`} gist={say`the yard at large`}>
        <GroundFacts
          ground={garden.site.ground}
          onSet={(what, changes) =>
            set(what, { op: "set-site", changes: { ground: { ...garden.site.ground, ...changes } } })
          }
        />
      </CardSection>
      <UnderlaySection garden={garden} />
      <NorthSection north={garden.site.north} />
      <PlaceSection site={garden.site} />
      <ClimateSection garden={garden} />
      <SeasonSection site={garden.site} />
      <BuyingSection garden={garden} />
      <CuttingSection garden={garden} />
      <LimitsSection garden={garden} />
      <CardSection title={say`This device`}>
        <LanguageField />
        <BoardField />
        <SingleKeysField />
      </CardSection>
    </>
  );
}
