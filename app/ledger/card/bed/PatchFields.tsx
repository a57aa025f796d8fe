import { type ItemOf, type Planting, type Site, say } from "../../../../src/index.ts";
import { patchWithin, shareOf, sidesOf, soilBox } from "../../../plan/hands/patches.ts";
import { LengthField } from "../../fields/LengthField.tsx";

interface Props {
  readonly bed: ItemOf<"bed">;
  readonly index: number;
  readonly planting: Planting;
  readonly site: Site;
  readonly onSet: (what: string, changes: Partial<Planting>) => void;
}

/** The part of the bed a planting has: an even share of what is left, or a place of its own, in the bed's own frame. */
export function PatchFields({ bed, index, planting, site, onSet }: Props) {
  const soil = soilBox(bed);
  const { patch } = planting;
  if (!soil) return <p className="wide quiet">{say`The walls leave no soil to plant.`}</p>;
  if (!patch) {
    const share = shareOf(bed, index, site);
    return (
      <p className="wide">
        {say`Has an even share of what is left of the bed.`}{" "}
        {share ? (
          <button
            type="button"
            className="link"
            onClick={() => onSet(say`the place`, { patch: share })}
          >{say`Give it a place of its own`}</button>
        ) : null}
      </p>
    );
  }
  const sides = sidesOf(patch);
  const left = sides.minX - soil.minX;
  const top = sides.minY - soil.minY;
  const put = (x: number, y: number, width: number, length: number) =>
    onSet(say`the place`, {
      patch: patchWithin({
        minX: soil.minX + x,
        minY: soil.minY + y,
        maxX: soil.minX + x + width,
        maxY: soil.minY + y + length,
      }),
    });
  return (
    <>
      <LengthField
        label={say`From the soil’s left`}
        may="negative"
        value={left}
        onCommit={(mm) => put(mm, top, patch.width, patch.length)}
      />
      <LengthField
        label={say`From the soil’s top`}
        may="negative"
        value={top}
        onCommit={(mm) => put(left, mm, patch.width, patch.length)}
      />
      <LengthField
        label={say`Place across`}
        value={patch.width}
        onCommit={(mm) => put(left, top, mm, patch.length)}
      />
      <LengthField
        label={say`Place down`}
        value={patch.length}
        onCommit={(mm) => put(left, top, patch.width, mm)}
      />
      <p className="wide">
        {bed.turn === 0 ? "" : `${say`As the bed lay before it was turned.`} `}
        <button
          type="button"
          className="link"
          onClick={() => onSet(say`the place`, { patch: null })}
        >{say`Back to an even share`}</button>
      </p>
    </>
  );
}
