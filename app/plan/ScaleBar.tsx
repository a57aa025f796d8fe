import { useEditor } from "../store/use-editor.ts";
import { scaleBar } from "./scale-bar.ts";

/** The scale bar at the lower left: filled to its half, open beyond. */
export function ScaleBar() {
  const scale = useEditor((state) => state.view.scale);
  const units = useEditor((state) => state.garden.units);
  const { mm, words } = scaleBar(scale, units);
  const width = Math.round(mm * scale);
  return (
    <div className="scale-bar" aria-hidden="true">
      <span>0</span>
      <span className="scale-bar-end">{words}</span>
      <span className="scale-bar-halves" style={{ width }} />
    </div>
  );
}
