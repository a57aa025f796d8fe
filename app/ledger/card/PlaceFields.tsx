import { boundsOf, boundsOfItem, type Item, nameOf, say } from "../../../src/index.ts";
import { openDialog } from "../../dialogs/open-dialog.ts";
import { shownGarden } from "../../store/editor.ts";
import { useEditor } from "../../store/use-editor.ts";
import { LengthField } from "../fields/LengthField.tsx";
import { NumberField } from "../fields/NumberField.tsx";

/** Where a thing stands, measured from the left and the top of the yard to its own left and top; and its turn. */
export function PlaceFields({ item }: { readonly item: Item }) {
  const yard = useEditor((s) => shownGarden(s).yard);
  const commit = useEditor((s) => s.commit);
  const corner = boundsOf(yard);
  const box = boundsOfItem(item);
  const left = box.minX - corner.minX;
  const top = box.minY - corner.minY;

  const moveBy = (dx: number, dy: number) =>
    commit(say`Move ${nameOf(item)}`, [{ op: "move", id: item.id, by: [dx, dy] }]);
  const turnTo = (turn: number) =>
    commit(say`Turn ${nameOf(item)}`, [{ op: "turn", id: item.id, by: turn - item.turn }]);

  return (
    <>
      <LengthField
        label={say`From the left`}
        value={left}
        may="negative"
        onCommit={(mm) => moveBy(mm - left, 0)}
      />
      <LengthField
        label={say`From the top`}
        value={top}
        may="negative"
        onCommit={(mm) => moveBy(0, mm - top)}
      />
      <NumberField label={say`Turned`} unit="°" value={item.turn} least={-360} most={360} onCommit={turnTo} />
      <p className="wide">
        <button
          type="button"
          className="link"
          onClick={() => openDialog("tape")}
        >{say`Place it by tape from two points`}</button>
      </p>
    </>
  );
}
