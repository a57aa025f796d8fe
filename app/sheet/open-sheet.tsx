import { createRoot } from "react-dom/client";
import { SheetDesk } from "./SheetDesk.tsx";
import "./sheet.css";

/**
 * Lays the build sheet over the page. It stands beside the page's root, not in it, so that in print everything else
 * is left out by one rule.
 */
export function openSheet(): void {
  if (document.querySelector(".sheet-desk")) return;
  const page = document.getElementById("root");
  const before = document.activeElement;
  const desk = document.createElement("div");
  desk.className = "sheet-desk";
  document.body.append(desk);
  const root = createRoot(desk);
  page?.setAttribute("inert", "");

  const close = () => {
    root.unmount();
    desk.remove();
    page?.removeAttribute("inert");
    if (before instanceof HTMLElement) before.focus();
  };
  root.render(<SheetDesk onClose={close} />);
}
