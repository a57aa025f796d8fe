import { useEffect } from "react";
import { say } from "../../src/index.ts";
import { useSingleKeys } from "../device/single-keys.ts";
import { openDialog } from "../dialogs/open-dialog.ts";
import { useEditor } from "../store/use-editor.ts";
import { fitPlan, zoomStep } from "./zoom.ts";

const mac = /mac|iphone|ipad/i.test(globalThis.navigator?.userAgent ?? "");

/** What the page's keys are called: Germans have "Strg" on theirs. */
export const keyNames = () => ({
  undo: mac ? "⌘Z" : say`Ctrl+Z`,
  redo: mac ? "⇧⌘Z" : say`Ctrl+Shift+Z or Ctrl+Y`,
  zoomIn: "+",
  zoomOut: "−",
  fit: "0",
  help: "?",
});

const TEXT = [
  "input:not([type=checkbox], [type=radio], [type=range])",
  "textarea",
  "select",
  "dialog",
].join();

/** Letters typed into a field are text, and a dialog has the keyboard to itself. */
const isTyping = (target: EventTarget | null): boolean =>
  target instanceof HTMLElement && (target.closest(TEXT) !== null || target.isContentEditable);

type Doing = () => void;

/** What a key does on the page as a whole, or null. */
export function shortcutFor(event: KeyboardEvent): Doing | null {
  if (event.defaultPrevented || event.altKey || isTyping(event.target)) return null;
  const { undo, redo } = useEditor.getState();
  const key = event.key.toLowerCase();
  if (event.ctrlKey || event.metaKey) {
    if (key === "z") return event.shiftKey ? redo : undo;
    if (key === "y" && !event.metaKey) return redo;
    return null;
  }
  if (!useSingleKeys.getState().on) return null;
  switch (key) {
    case "+":
    case "=":
      return () => zoomStep(true);
    case "-":
      return () => zoomStep(false);
    case "0":
      return fitPlan;
    case "?":
      return () => openDialog("help");
    default:
      return null;
  }
}

/** Listens for the page's own keys. */
export function useShortcuts(): void {
  useEffect(() => {
    const onKeyDown = (event: KeyboardEvent) => {
      const doing = shortcutFor(event);
      if (!doing) return;
      event.preventDefault();
      doing();
    };
    window.addEventListener("keydown", onKeyDown);
    return () => window.removeEventListener("keydown", onKeyDown);
  }, []);
}
