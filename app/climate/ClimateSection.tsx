import { climateOf, type Garden, told, WEEKLY_RULE } from "../../src/index.ts";
import { openDialog } from "../dialogs/open-dialog.ts";
import { CardSection } from "../ledger/card/CardSection.tsx";
import { useEditor } from "../store/use-editor.ts";

/** The climate the water of the beds is reckoned by, or the word that there is none and what is taken instead. */
export function ClimateSection({ garden }: { readonly garden: Garden }) {
  const commit = useEditor((s) => s.commit);
  const { climate } = garden;
  const known = climateOf(garden);
  return (
    <CardSection title="Climate" gist={climate ? climate.station || "twelve months" : "not given yet"}>
      <p className="wide">
        {climate
          ? `Water is reckoned from the twelve months${climate.station ? ` of ${climate.station}` : ""}.`
          : `Without the climate's means, water goes by a rule of thumb that is the same in every place and month: ${told(WEEKLY_RULE.amount)}.`}
      </p>
      {known && "problem" in known ? (
        <p className="field-problem wide">There can be no such climate: {known.problem}.</p>
      ) : null}
      <p className="wide">
        <button type="button" className="button" onClick={() => openDialog("climate")}>
          {climate ? "Look at the months" : "Type or paste the months"}
        </button>{" "}
        {climate ? (
          <button
            type="button"
            className="button"
            onClick={() => commit("Take the climate out", [{ op: "set-garden", changes: { climate: null } }])}
          >
            Take it out
          </button>
        ) : null}
      </p>
    </CardSection>
  );
}
