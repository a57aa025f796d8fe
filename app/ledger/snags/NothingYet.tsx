import type { Garden, Item } from "../../../src/index.ts";
import { useEditor } from "../../store/use-editor.ts";
import { ToSite } from "../ToSite.tsx";

/** What to do next on a plan without a bed: only what is not there yet is asked for. */
export function NothingYet({ garden }: { readonly garden: Garden }) {
  const selectYard = useEditor((s) => s.selectYard);
  const lacks = (kind: Item["kind"]) => garden.items.every((item) => item.kind !== kind);
  const isNowhere = garden.site.place === "";
  return (
    <div className="leaf-text">
      <h3>No bed on the plan yet</h3>
      <ol className="steps">
        <li>
          Give{" "}
          <button type="button" className="link" onClick={selectYard}>
            the yard
          </button>{" "}
          its outline: pull its corners, or type its sides <ToSite />.
        </li>
        {lacks("house") || lacks("door") ? (
          <li>Drag the house and its doors out of the barrow, and mark the kitchen’s.</li>
        ) : null}
        {lacks("tap") ? (
          <li>Put the tap where it is: how far the hose goes is reckoned from there.</li>
        ) : null}
        {isNowhere ? (
          <li>
            Say where it is and which way north lies <ToSite />: sun and seasons follow from it.
          </li>
        ) : null}
        <li>Drag a bed out of the barrow. What is wrong with it stands here, with the ways out.</li>
      </ol>
    </div>
  );
}
