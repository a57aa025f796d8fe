import { say } from "../../src/index.ts";
import { useKeeping } from "../keeping/use-keeping.ts";

/** Whether what was done is kept on this device. Why it is not is told above the plan, with what to do. */
export function KeptLine() {
  const state = useKeeping((s) => s.keeping.state);
  const onShelf = useKeeping((s) => s.gardenId !== null);
  const isHere = useKeeping((s) => s.place === "here");
  if (!isHere) return <p className="kept-line">{say`Look only`}</p>;
  switch (state) {
    case "kept":
      return <p className="kept-line">{onShelf ? say`Saved` : say`Example`}</p>;
    case "keeping":
      return <p className="kept-line">{say`Saving…`}</p>;
    case "not-kept":
      return <p className="kept-line wrong">{say`Not saved`}</p>;
  }
}
