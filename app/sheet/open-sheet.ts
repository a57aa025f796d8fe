import { useEditor } from "../store/use-editor.ts";

/** Shows the build sheet. Until it can be drawn, says so. */
export function openSheet(): void {
  useEditor.getState().say("The build sheet cannot be drawn yet.");
}
