import { type Item, nameOf, say } from "../../../src/index.ts";
import { useEditor } from "../../store/use-editor.ts";

/**
 * Sets fields of a thing as one step of history.
 * @param what names the change in the history: "width"
 * @throws RangeError where no garden may hold the value; nothing is changed then
 */
export function setItem(item: Item, what: string, changes: Readonly<Record<string, unknown>>): void {
  useEditor.getState().commit(say`Set ${what} of ${nameOf(item)}`, [{ op: "set", id: item.id, changes }]);
}
