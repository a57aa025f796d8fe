import { useKeeping } from "../keeping/use-keeping.ts";

/** Whether what was done is kept on this device. */
export function KeptLine() {
  const keeping = useKeeping((s) => s.keeping);
  const onShelf = useKeeping((s) => s.gardenId !== null);
  switch (keeping.state) {
    case "kept":
      return <p className="kept-line">{onShelf ? "Saved" : "Example"}</p>;
    case "keeping":
      return <p className="kept-line">Saving…</p>;
    case "not-kept":
      return (
        <p className="kept-line wrong" role="alert">
          Not saved: {keeping.reason}
        </p>
      );
  }
}
