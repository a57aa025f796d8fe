import { say } from "../../src/index.ts";
import { Notice } from "../keeping/Notice.tsx";
import { useKeeping } from "../keeping/use-keeping.ts";
import { takeUpdate, useUpdates } from "./updates.ts";

/** Offers a newer version of the planner. It is used when somebody says so, or once no tab is open any more. */
export function UpdateNotice() {
  const ready = useUpdates((s) => s.ready !== null);
  const isKept = useKeeping((s) => s.keeping.state !== "not-kept");
  if (!ready) return null;
  const doings = (
    <>
      <button
        type="button"
        className="button main"
        aria-disabled={!isKept}
        onClick={() => isKept && takeUpdate()}
      >{say`Use it now`}</button>
      <button
        type="button"
        className="button"
        onClick={() => useUpdates.setState({ ready: null })}
      >{say`Later`}</button>
    </>
  );
  return (
    <Notice doings={doings}>
      {isKept
        ? say`A new version of Bedwright is ready. Your garden stays as it is; the page loads again.`
        : say`A new version of Bedwright is ready. It can be used once your garden is saved.`}
    </Notice>
  );
}
