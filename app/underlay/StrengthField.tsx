import { useId } from "react";
import { say, type Underlay } from "../../src/index.ts";
import { shownGarden } from "../store/editor.ts";
import { useEditor } from "../store/use-editor.ts";
import { underlayOps } from "./set-underlay.ts";

interface Props {
  /** As last committed. */
  readonly underlay: Underlay;
  readonly opacity: number;
}

/** How strongly the picture shows: seen on the plan while it is slid, one step of history once it is let go. */
export function StrengthField({ underlay, opacity }: Props) {
  const id = useId();
  const shown = useEditor((state) => shownGarden(state).underlay?.opacity ?? opacity);
  const percent = Math.round(shown * 100);
  const slide = (to: number) => useEditor.getState().preview(underlayOps({ ...underlay, opacity: to / 100 }));
  const keep = () => {
    const { draft, garden, commitPreview, dropPreview } = useEditor.getState();
    if (!draft) return;
    if (draft.underlay?.opacity === garden.underlay?.opacity) dropPreview();
    else commitPreview(say`Fade the picture beneath`);
  };
  return (
    <div className="field wide">
      <label htmlFor={id}>{say`Strength`}</label>
      <span className="field-box underlay-strength">
        <input
          id={id}
          type="range"
          min={0}
          max={100}
          step={5}
          value={percent}
          aria-valuetext={`${percent} %`}
          onChange={(event) => slide(Number(event.target.value))}
          onPointerUp={keep}
          onPointerCancel={keep}
          onKeyUp={keep}
          onBlur={keep}
        />
        <output htmlFor={id}>{percent} %</output>
      </span>
    </div>
  );
}
