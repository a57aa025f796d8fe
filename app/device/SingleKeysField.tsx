import { say } from "../../src/index.ts";
import { CheckField } from "../ledger/fields/CheckField.tsx";
import { setSingleKeys, useSingleKeys } from "./single-keys.ts";

/** Turns the page's single keys off for whom they are in the way. */
export function SingleKeysField() {
  const on = useSingleKeys((s) => s.on);
  return (
    <CheckField
      label={say`Single keys: +, −, 0 and ?`}
      checked={on}
      onCommit={setSingleKeys}
      note={say`Keys of the plan itself work only while the plan has the keyboard.`}
    />
  );
}
