import type { Takeoff } from "../../src/index.ts";
import { useProvenTakeoff } from "../live/cut-proof.ts";
import { shownGarden } from "../store/editor.ts";
import { useEditor } from "../store/use-editor.ts";
import { Money } from "./Money.tsx";

/** The same money as the Takeoff leaf and the build sheet say: with cut plans as they are proven. */
export function ProvenMoney({ takeoff }: { readonly takeoff: Takeoff }) {
  const garden = useEditor(shownGarden);
  const resting = useEditor((s) => s.draft === null);
  const { takeoff: proven, stateOf } = useProvenTakeoff(garden, takeoff, resting);
  const proving = proven.boardPlans.some(({ key }) => stateOf(key).state === "proving");
  return <Money takeoff={proven} proof={proving ? "proving" : "settled"} />;
}
