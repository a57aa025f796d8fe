import { say } from "../../src/index.ts";
import { useEditor } from "../store/use-editor.ts";
import { tellTrouble } from "./trouble.ts";

/** What a file may be, for the browser's own list of files. */
export const PICTURE_TYPES = "image/png,image/jpeg,image/webp";

/** Lays a chosen or dropped file beneath the plan; what cannot be done is said above it. */
export async function choosePicture(file: File): Promise<void> {
  const editor = useEditor.getState();
  if (editor.locked) {
    editor.say(say`Nothing was changed: this garden is being changed in another tab.`);
    return;
  }
  tellTrouble(null);
  editor.say(say`Reading the picture`);
  const { layPicture } = await import("./lay-picture.ts");
  const problem = await layPicture(file);
  tellTrouble(problem);
  if (!problem)
    useEditor.getState().say(say`The picture lies beneath the plan. Drag it into place, or set its scale.`);
}
