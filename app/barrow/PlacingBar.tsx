import { say, told, word } from "../../src/index.ts";
import { endDrawing, isDrawn, takePointBack } from "../plan/hands/drawing.ts";
import { useMarks } from "../plan/hands/marks.ts";
import { dropPlacing } from "../plan/hands/placing.ts";
import { waitingCrop } from "../plan/hands/planting.ts";
import { DESK } from "../plan/hands/use-hands.ts";
import { useEditor } from "../store/use-editor.ts";
import { CropChoice } from "./CropChoice.tsx";
import { goodWaiting } from "./goods.ts";

/** Drawn from the ledger, and no goods of the barrow. */
const PIPES: Readonly<Record<string, string>> = {
  main: word("Main of the drip lines"),
  "drip-line": word("Drip line"),
};

/** While something waits to be placed or is drawn: what to do next, and the ways to end it without a key. */
export function PlacingBar() {
  const placing = useEditor((state) => state.placing);
  const points = useMarks((marks) => marks.drawing?.points.length ?? 0);
  if (placing === null) return null;
  const crop = waitingCrop(placing);
  if (crop) return <CropChoice crop={crop} />;
  const label = goodWaiting(placing)?.label ?? PIPES[placing] ?? placing;
  const drawn = isDrawn(placing) ? placing : null;
  return (
    <div className="placing-bar">
      <p>
        <b>{told(label)}</b>: {drawn ? drawWords(points) : say`tap the plan where it is to stand.`}
      </p>
      {drawn && points > 0 && (
        <>
          <button type="button" className="button" onClick={() => takePointBack(DESK, drawn)}>
            {say`Point back`}
          </button>
          <button type="button" className="button" onClick={() => endDrawing(DESK, drawn)}>
            {say`Done`}
          </button>
        </>
      )}
      <button type="button" className="button" onClick={() => dropPlacing(DESK)}>
        {say`Drop it`}
      </button>
    </div>
  );
}

function drawWords(points: number): string {
  if (points === 0) return say`tap the plan where it begins.`;
  return say`tap each further point; tap the last one again to end.`;
}
