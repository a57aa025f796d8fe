import { emptyGarden } from "../../src/index.ts";
import { createEditor } from "./editor.ts";

/** The page's one editor. `main.tsx` opens the kept garden or the worked example on it before the first paint. */
export const useEditor = createEditor(emptyGarden("us"));
