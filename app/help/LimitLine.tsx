import { defaultLimit, LIMITS, type LimitId, say } from "../../src/index.ts";
import { closeDialog } from "../dialogs/open-dialog.ts";
import { useLedger } from "../ledger/ledger-state.ts";
import { writeLimit } from "../ledger/site/write-limit.ts";
import { ended, sourceText } from "../ledger/snags/SourceLine.tsx";
import { useEditor } from "../store/use-editor.ts";

/** A limit as this garden is held to it, the gardener's own or the default, where it comes from, and the way to change it. */
export function LimitLine({ id }: { readonly id: LimitId }) {
  const units = useEditor((s) => s.garden.units);
  const edition = useEditor((s) => s.garden.gardener.edition);
  const own = useEditor((s) => s.garden.limits[id]);
  const { label } = LIMITS[id];
  const usual = defaultLimit(id, edition);
  const usually = writeLimit(id, usual.value, units);

  const change = () => {
    closeDialog();
    const { wantLimit, openCard, drawTo, stop } = useLedger.getState();
    wantLimit(id);
    openCard(false);
    if (stop === "low") drawTo("half");
    useEditor.getState().turnTo("site");
  };

  return (
    <li>
      <span>{label}:</span> <strong>{own === undefined ? usually : writeLimit(id, own, units)}</strong>
      {own === undefined ? ` ${say`(the default)`}` : `, ${say`your own; the default is ${usually}`}`}.{" "}
      <span className="quiet">{ended(sourceText(usual.source))}</span>{" "}
      <button type="button" className="link" onClick={change}>
        {say`Change`}
        <span className="unseen"> {say`the limit: ${label}`}</span>
      </button>
    </li>
  );
}
