import { plainText, say, told, word } from "../../src/index.ts";
import { openDialog } from "../dialogs/open-dialog.ts";
import { Filled, slot } from "../language/Filled.tsx";
import { UnderlayNotices } from "../underlay/UnderlayNotices.tsx";
import { Notice } from "./Notice.tsx";
import { pageGardens } from "./page-gardens.ts";
import { useKeeping } from "./use-keeping.ts";

/** What is not kept, not changed here or not read. Nothing is shown while all is well. */
export function KeepingNotices() {
  return (
    <>
      <KeptNotice />
      <PlaceNotice />
      <SetAsideNotice />
      <UnderlayNotices />
    </>
  );
}

const GardensButton = () => (
  <button
    type="button"
    className="button"
    onClick={() => openDialog("gardens")}
    aria-label={say`Gardens kept here`}
  >{say`Gardens`}</button>
);

function KeptNotice() {
  const keeping = useKeeping((s) => s.keeping);
  if (keeping.state === "not-kept") {
    const save = (
      <>
        <button
          type="button"
          className="button main"
          onClick={() => void pageGardens().saveToFile()}
        >{say`Save to a file`}</button>
        <GardensButton />
      </>
    );
    return (
      <Notice urgent doings={save}>
        <strong>{say`Not saved.`}</strong> {keeping.reason}
      </Notice>
    );
  }
  if (keeping.state !== "kept" || keeping.lacking === undefined) return null;
  return <Notice doings={<GardensButton />}>{keeping.lacking}</Notice>;
}

function PlaceNotice() {
  const place = useKeeping((s) => s.place);
  if (place === "here") return null;
  const isHeldBack = place === "held-back";
  const takeOver = (
    <button type="button" className="button main" onClick={() => void pageGardens().takeOver()}>
      {isHeldBack ? say`Try again` : say`Change it here`}
    </button>
  );
  return (
    <Notice urgent={isHeldBack} doings={takeOver}>
      {isHeldBack ? told(HELD_BACK) : told(ELSEWHERE)}
    </Notice>
  );
}

const ELSEWHERE = word(
  "This garden is being changed in another tab. Here it can be looked at, and shows what is done there.",
);
const HELD_BACK = word(
  "The other tab has changes that it cannot save. Save them to a file there, then take over here.",
);

function SetAsideNotice() {
  const setAside = useKeeping((s) => s.setAside);
  if (!setAside) return null;
  const doings = (
    <>
      <GardensButton />
      <button
        type="button"
        className="button"
        onClick={() => useKeeping.setState({ setAside: null })}
        aria-label={say`Got it: dismiss the notice of the garden set aside`}
      >{say`Got it`}</button>
    </>
  );
  return (
    <Notice urgent doings={doings}>
      <Filled
        text={say`${slot(0)} is set aside, whole: ${setAside.problem}. Its file and its earlier states are under Gardens.`}
        put={[<strong key="name">{plainText(setAside.name) || say`A garden without a name`}</strong>]}
      />
    </Notice>
  );
}
