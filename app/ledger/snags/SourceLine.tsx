import {
  defaultLimit,
  type Gardener,
  type LimitId,
  limitIds,
  type Snag,
  type Source,
  say,
  told,
  word,
} from "../../../src/index.ts";
import { WhyLink } from "../../help/WhyLink.tsx";
import { useEditor } from "../../store/use-editor.ts";
import { useLedger } from "../ledger-state.ts";

const HOW: Readonly<Record<Exclude<Source["how"], "published">, string>> = {
  memory: word("From memory, not looked up again:"),
  practice: word("Common practice:"),
  computed: word("Reckoned:"),
};

export const sourceText = ({ how, text }: Source): string =>
  how === "published" ? say`From ${text}` : `${told(HOW[how])} ${text}`;

/** Where a snag's limit comes from, and where to change it. */
export function SourceLine({ snag }: { readonly snag: Snag }) {
  const edition = useEditor((s) => s.garden.gardener.edition);
  const limit = limitOf(snag.source, edition);
  const show = (id: LimitId) => {
    useLedger.getState().wantLimit(id);
    useLedger.getState().openCard(false);
    useEditor.getState().turnTo("site");
  };
  return (
    <p className="snag-source">
      {ended(sourceText(snag.source))}{" "}
      {limit ? (
        <>
          <button
            type="button"
            className="link"
            onClick={() => show(limit)}
          >{say`Change it under Site`}</button>
          {" · "}
        </>
      ) : null}
      <WhyLink wanted={{ rule: snag.rule }} of={say`the rule`} />
    </p>
  );
}

/** The limit whose source a rule cites; a rule takes its source from the limits table. */
const limitOf = ({ text }: Source, edition: Gardener["edition"]): LimitId | undefined =>
  limitIds.find((id) => defaultLimit(id, edition).source.text === text);

/** As a sentence. */
export const ended = (text: string): string => (/[.!?]$/.test(text) ? text : `${text}.`);
