import { useEffect, useState } from "react";
import {
  type BestPlace,
  distance,
  formatHours,
  formatLength,
  type Garden,
  headingOf,
  INCH,
  type ItemOf,
  nameOf,
  say,
  subtract,
} from "../../../src/index.ts";
import { askSun } from "../../live/sun-questions.ts";
import { useMoment } from "../../moment/moment.ts";
import { useEditor } from "../../store/use-editor.ts";

/** Less than this is not worth saying that it moves, mm. */
const SAME_PLACE = 1;

type Search =
  | { readonly state: "looking" }
  | { readonly state: "found"; readonly place: BestPlace | null }
  | { readonly state: "failed"; readonly reason: string };

/** Looks for the place where a bed gets most sun, shows it on the plan and offers to move it there. */
export function BestPlaceFor({ bed }: { readonly bed: ItemOf<"bed"> }) {
  const garden = useEditor((s) => s.garden);
  const [asked, setAsked] = useState<{ readonly of: Garden; readonly search: Search } | null>(null);
  // What was found in a garden that has changed since is no answer.
  const search = asked?.of === garden ? asked.search : null;
  const place = search?.state === "found" ? search.place : null;
  const isLooking = search?.state === "looking";

  useEffect(() => {
    useMoment.setState({ ghost: place?.ring ?? null });
    return () => useMoment.setState({ ghost: null });
  }, [place]);

  const look = async () => {
    const questions = askSun();
    if (!questions) return;
    const keep = (found: Search) => setAsked({ of: garden, search: found });
    keep({ state: "looking" });
    try {
      const found = await questions.bestPlace(garden, bed.id);
      // The newest question is the one that counts.
      setAsked((now) =>
        now?.of === garden && now.search.state === "looking"
          ? { of: garden, search: { state: "found", place: found } }
          : now,
      );
    } catch (error) {
      keep({ state: "failed", reason: error instanceof Error ? error.message : String(error) });
    }
  };

  const move = ({ ops, hours }: BestPlace) => {
    const { commit, say: tell } = useEditor.getState();
    commit(say`Move ${nameOf(bed)} to the sun`, ops);
    tell(say`${nameOf(bed)} moved: ${formatHours(hours)} of sun a day`);
  };

  return (
    <div className="best-place">
      {place ? (
        <>
          <p>{placeWords(place, bed, garden)}</p>
          <span className="ways-out">
            <button type="button" className="button" onClick={() => move(place)}>{say`Move it there`}</button>
            <button type="button" className="button" onClick={() => setAsked(null)}>{say`Leave it`}</button>
          </span>
        </>
      ) : (
        <>
          <button type="button" className="button" onClick={() => (isLooking ? setAsked(null) : void look())}>
            {isLooking ? say`Stop looking` : say`Best place for it`}
          </button>
          <p role="status">{search ? searchWords(search) : ""}</p>
        </>
      )}
    </div>
  );
}

function searchWords(search: Search): string {
  if (search.state === "looking") return say`Looking…`;
  if (search.state === "failed") return say`It could not be looked for: ${search.reason}.`;
  return search.place === null ? say`No other place has more sun and makes no new snag.` : "";
}

/** "8.1 h a day there, 1.4 h more than here: 12 ft south-east, turned." */
function placeWords(place: BestPlace, bed: ItemOf<"bed">, { units, site }: Garden): string {
  const gain = place.was === null ? "" : say`, ${formatHours(place.hours - place.was)} more than here`;
  const far = distance(bed.at, place.at);
  const way =
    far < SAME_PLACE
      ? say`where it is`
      : `${formatLength(units === "us" ? Math.round(far / INCH) * INCH : far, units)} ${headingOf(subtract(place.at, bed.at), site.north)}`;
  const turned = place.turn === bed.turn ? "" : say`, turned`;
  return say`${formatHours(place.hours)} a day there${gain}: ${way}${turned}.`;
}
