import { type Garden, type Item, say } from "../../../src/index.ts";
import { Filled, slot } from "../../language/Filled.tsx";
import { useEditor } from "../../store/use-editor.ts";
import { ToSite } from "../ToSite.tsx";

/** What to do next on a plan without a bed: only what is not there yet is asked for. */
export function NothingYet({ garden }: { readonly garden: Garden }) {
  const selectYard = useEditor((s) => s.selectYard);
  const lacks = (kind: Item["kind"]) => garden.items.every((item) => item.kind !== kind);
  const isNowhere = garden.site.place === "";
  return (
    <div className="leaf-text">
      <h3>{say`No bed on the plan yet`}</h3>
      <ol className="steps">
        <li>
          <Filled
            text={say`Give ${slot(0)} its outline: pull its corners, or type its sides ${slot(1)}.`}
            put={[
              <button key="yard" type="button" className="link" onClick={selectYard}>{say`the yard`}</button>,
              <ToSite key="site" />,
            ]}
          />
        </li>
        {lacks("house") || lacks("door") ? (
          <li>{say`Drag the house and its doors out of the barrow, and mark the kitchen’s.`}</li>
        ) : null}
        {lacks("tap") ? (
          <li>{say`Put the tap where it is: how far the hose goes is reckoned from there.`}</li>
        ) : null}
        {isNowhere ? (
          <li>
            <Filled
              text={say`Say where it is and which way north lies ${slot(0)}: sun and seasons follow from it.`}
              put={[<ToSite key="site" />]}
            />
          </li>
        ) : null}
        <li>{say`Drag a bed out of the barrow. What is wrong with it stands here, with the ways out.`}</li>
      </ol>
    </div>
  );
}
