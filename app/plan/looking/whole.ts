import type { EditorState, View } from "../../store/editor.ts";
import { useEditor } from "../../store/use-editor.ts";
import { fitView } from "../navigation.ts";
import { usePlanSize } from "../plan-size.ts";

/**
 * Shows a garden whole when it comes on the board, and keeps it whole while the plan's element changes size, until
 * somebody has looked closer.
 */
export function showWhole(): () => void {
  let whole: View | null = null;
  const show = () => {
    const { width, height } = usePlanSize.getState();
    if (width <= 0 || height <= 0) return;
    fitView(useEditor);
    whole = useEditor.getState().view;
  };
  const stops = [
    usePlanSize.subscribe(() => {
      if (!whole || whole === useEditor.getState().view) show();
    }),
    useEditor.subscribe((now, before) => {
      if (isOpened(now, before)) show();
    }),
  ];
  show();
  return () => {
    for (const stop of stops) stop();
  };
}

/** Only opening leaves another garden with nothing to undo or redo. */
const isOpened = (now: EditorState, before: EditorState): boolean =>
  now.garden !== before.garden && now.past.length === 0 && now.future.length === 0;
