import { type ChangeEvent, useCallback, useEffect, useState } from "react";
import { EXAMPLES, say } from "../../src/index.ts";
import { pageGardens } from "../keeping/page-gardens.ts";
import type { KeptGarden, Outcome } from "../keeping/types.ts";
import { useKeeping } from "../keeping/use-keeping.ts";
import { Dialog } from "./Dialog.tsx";
import { KeptRow } from "./KeptRow.tsx";
import { closeDialog, openDialog } from "./open-dialog.ts";

/** Gardens kept on this device; new ones, examples, files. */
export function GardensDialog() {
  const gardens = pageGardens();
  const onBoard = useKeeping((s) => s.gardenId);
  const [kept, setKept] = useState<readonly KeptGarden[] | null>(null);
  const [refusal, setRefusal] = useState<string | null>(null);

  const refresh = useCallback(async () => setKept(await gardens.list()), [gardens]);
  useEffect(() => {
    void refresh();
  }, [refresh]);

  /** Does one thing; tells why if it was refused, and closes the dialog when another garden came on the board. */
  const go = async (doing: Promise<Outcome>) => {
    const outcome = await doing;
    setRefusal(outcome.ok ? null : outcome.reason);
    if (outcome.ok && outcome.garden) closeDialog();
    else await refresh();
  };

  const onFile = (event: ChangeEvent<HTMLInputElement>) => {
    const file = event.target.files?.[0];
    // The same file must be choosable again after it has been mended.
    event.target.value = "";
    if (file) void go(gardens.openFromFile(file));
  };

  return (
    <Dialog title={say`Gardens`}>
      {refusal ? (
        <p className="field-problem" role="alert">
          {refusal}
        </p>
      ) : null}

      <section aria-label={say`Kept on this device`}>
        <h3>{say`Kept on this device`}</h3>
        {kept === null ? <p className="quiet">{say`Looking…`}</p> : null}
        {kept?.length === 0 ? (
          <p className="quiet">{say`None yet. The first change to a garden keeps it.`}</p>
        ) : null}
        <ul className="kept-list">
          {kept?.map((garden) => (
            <KeptRow
              key={garden.id}
              garden={garden}
              onBoard={garden.id === onBoard}
              onOpen={() => void go(gardens.open(garden.id))}
              onRemove={() => void go(gardens.remove(garden.id))}
              onRescue={() => void go(gardens.rescue(garden.id))}
              earlier={gardens.earlier}
              onGoBack={(at) => void go(gardens.goBackTo(garden.id, at))}
            />
          ))}
        </ul>
      </section>

      <section aria-label={say`The garden on the board`}>
        <h3>{say`The garden on the board`}</h3>
        <p className="dialog-actions">
          <button
            type="button"
            className="button"
            onClick={() => void go(gardens.duplicate())}
          >{say`Duplicate it`}</button>
          <button
            type="button"
            className="button"
            onClick={() => void gardens.saveToFile()}
          >{say`Save to a file`}</button>
          <button
            type="button"
            className="button"
            onClick={() => openDialog("take-along")}
          >{say`Link, picture, list`}</button>
        </p>
      </section>

      <section aria-label={say`Start another`}>
        <h3>{say`Start another`}</h3>
        <p className="dialog-actions">
          <button
            type="button"
            className="button"
            onClick={() => void go(gardens.startNew("us"))}
          >{say`New yard, feet and inches`}</button>
          <button
            type="button"
            className="button"
            onClick={() => void go(gardens.startNew("metric"))}
          >{say`New yard, metric`}</button>
          <label className="button file-button">
            {say`Open from a file`}
            <input type="file" accept=".json,application/json" onChange={onFile} />
          </label>
        </p>
        <ul className="example-list">
          {EXAMPLES.map((example) => (
            <li key={example.id}>
              <button
                type="button"
                className="link"
                onClick={() => void go(gardens.startExample(example.id))}
              >{say`Worked example: ${example.garden.name}`}</button>
            </li>
          ))}
        </ul>
      </section>
    </Dialog>
  );
}
