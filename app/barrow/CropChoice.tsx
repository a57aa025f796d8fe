import { useId } from "react";
import { flushSync } from "react-dom";
import { type CropId, isCropId, say } from "../../src/index.ts";
import { dropPlacing } from "../plan/hands/placing.ts";
import { placingCrop, putShare, USUAL_CROP } from "../plan/hands/planting.ts";
import { DESK } from "../plan/hands/use-hands.ts";
import { CropOptions } from "../planting/CropOptions.tsx";
import { useEditor } from "../store/use-editor.ts";

/** While a crop waits for its place: which, what to do next, and the ways to end it without a drag or a key. */
export function CropChoice({ crop }: { readonly crop: CropId }) {
  const id = useId();
  const choose = (chosen: string) => {
    if (isCropId(chosen)) useEditor.getState().pick(placingCrop(chosen));
  };
  return (
    <div className="placing-bar">
      <label htmlFor={id}>{say`Crop`}</label>
      <select id={id} value={crop} data-crop-choice onChange={(event) => choose(event.target.value)}>
        <CropOptions />
      </select>
      <p>{say`Drag its place in a bed, or tap two corners of it.`}</p>
      <button type="button" className="button" onClick={() => putShare(DESK, crop)}>
        {say`Even share of the bed chosen`}
      </button>
      <button type="button" className="button" onClick={() => dropPlacing(DESK)}>
        {say`Drop it`}
      </button>
    </div>
  );
}

/** Has a crop wait for its place, and gives the keyboard to the choice of which. */
export function chooseCrop(): void {
  flushSync(() => useEditor.getState().pick(placingCrop(USUAL_CROP)));
  document.querySelector<HTMLElement>("[data-crop-choice]")?.focus();
}
