import { frameOf, type ItemOf, say, sayCount } from "../../../../src/index.ts";
import { CheckField } from "../../fields/CheckField.tsx";
import { LengthField } from "../../fields/LengthField.tsx";
import { NumberField } from "../../fields/NumberField.tsx";
import { StageField } from "../StageField.tsx";
import { setItem } from "../set-item.ts";

type Bed = ItemOf<"bed">;

/** What of a bed stands in the yard already, and at which stage the rest is built. */
export function StandingFields({ bed }: { readonly bed: Bed }) {
  const { already } = bed;
  const drawn = coursesOf(bed);
  const set = (what: string, next: Bed["already"]) => setItem(bed, what, { already: next });
  return (
    <>
      <CheckField
        label={say`Stands in the yard already`}
        checked={already !== null}
        note={say`Only what is still to be added is counted and bought.`}
        onCommit={(stands) =>
          set(say`what stands`, stands ? { courses: drawn, soilDepth: frameOf(bed).soilDepth } : null)
        }
      />
      {already && drawn > 1 ? (
        <NumberField
          label={say`Courses there`}
          whole
          least={1}
          most={drawn}
          unit={say`of ${drawn}`}
          value={Math.min(already.courses, drawn)}
          onCommit={(courses) => set(say`courses that stand`, { ...already, courses })}
        />
      ) : null}
      {already ? (
        <LengthField
          label={say`Soil in it`}
          may="zero"
          value={already.soilDepth}
          onCommit={(soilDepth) => set(say`soil in it`, { ...already, soilDepth })}
        />
      ) : null}
      <StageField item={bed} />
    </>
  );
}

/** Courses as drawn; a wall that has none counts as one. */
const coursesOf = ({ wall }: Bed): number => ("courses" in wall ? wall.courses : 1);

/** "new, stage 2", "1 of 2 courses stands": what the section holds while it is shut. */
export function standingGist(bed: Bed): string {
  const { already, stage } = bed;
  const drawn = coursesOf(bed);
  const words = already ? standsWords(already.courses, drawn) : say`new`;
  return stage > 1 ? say`${words}, stage ${stage}` : words;
}

function standsWords(courses: number, drawn: number): string {
  if (courses >= drawn) return say`stands`;
  return sayCount(
    courses,
    { one: "{{count}} of {{drawn}} courses stands", other: "{{count}} of {{drawn}} courses stand" },
    { drawn },
  );
}
