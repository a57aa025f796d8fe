import { climateOf, type Garden, say, told, WEEKLY_RULE } from "../../src/index.ts";
import { openDialog } from "../dialogs/open-dialog.ts";
import { CardSection } from "../ledger/card/CardSection.tsx";
import { useEditor } from "../store/use-editor.ts";

/** The climate the water of the beds is reckoned by, or the word that there is none and what is taken instead. */
export function ClimateSection({ garden }: { readonly garden: Garden }) {
  const commit = useEditor((s) => s.commit);
  const { climate } = garden;
  const known = climateOf(garden);
  return (
    <CardSection
      title={say`Climate`}
      gist={climate ? climate.station || say`twelve months` : say`not given yet`}
    >
      <p className="wide">{basisWords(climate)}</p>
      {known && "problem" in known ? (
        <p className="field-problem wide">{say`There can be no such climate: ${known.problem}.`}</p>
      ) : null}
      <p className="wide">
        <button type="button" className="button" onClick={() => openDialog("climate")}>
          {climate ? say`Look at the months` : say`Type or paste the months`}
        </button>{" "}
        {climate ? (
          <button
            type="button"
            className="button"
            onClick={() =>
              commit(say`Take the climate out`, [{ op: "set-garden", changes: { climate: null } }])
            }
          >
            {say`Take it out`}
          </button>
        ) : null}
      </p>
    </CardSection>
  );
}

function basisWords(climate: Garden["climate"]): string {
  if (!climate) {
    return say`Without the climate's means, water goes by a rule of thumb that is the same in every place and month: ${told(WEEKLY_RULE.amount)}.`;
  }
  return climate.station
    ? say`Water is reckoned from the twelve months of ${climate.station}.`
    : say`Water is reckoned from the twelve months.`;
}
