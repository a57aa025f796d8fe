import { plainText } from "../../src/index.ts";
import { openDialog } from "../dialogs/open-dialog.ts";
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
    aria-label="Gardens kept here"
  >
    Gardens
  </button>
);

function KeptNotice() {
  const keeping = useKeeping((s) => s.keeping);
  if (keeping.state === "not-kept") {
    const save = (
      <>
        <button type="button" className="button main" onClick={() => void pageGardens().saveToFile()}>
          Save to a file
        </button>
        <GardensButton />
      </>
    );
    return (
      <Notice urgent doings={save}>
        <strong>Not saved.</strong> {keeping.reason}
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
      {isHeldBack ? "Try again" : "Change it here"}
    </button>
  );
  return (
    <Notice urgent={isHeldBack} doings={takeOver}>
      {isHeldBack ? HELD_BACK : ELSEWHERE}
    </Notice>
  );
}

const ELSEWHERE =
  "This garden is being changed in another tab. Here it can be looked at, and shows what is done there.";
const HELD_BACK =
  "The other tab has changes that it cannot save. Save them to a file there, then take over here.";

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
        aria-label="Got it: dismiss the notice of the garden set aside"
      >
        Got it
      </button>
    </>
  );
  return (
    <Notice urgent doings={doings}>
      <strong>{plainText(setAside.name) || "A garden without a name"}</strong> is set aside, whole:{" "}
      {setAside.problem}. Its file and its earlier states are under Gardens.
    </Notice>
  );
}
