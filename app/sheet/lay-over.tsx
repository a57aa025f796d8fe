import type { ReactNode } from "react";
import { createRoot } from "react-dom/client";
import "./sheet.css";

/**
 * Lays a page to print over the planner's own. It stands beside the page's root, not in it, so that in print everything
 * else is left out by one rule.
 */
export function layOver(desk: (close: () => void) => ReactNode): void {
  if (document.querySelector(".sheet-desk")) return;
  const page = document.getElementById("root");
  const before = document.activeElement;
  const place = document.createElement("div");
  place.className = "sheet-desk";
  document.body.append(place);
  const root = createRoot(place);
  page?.setAttribute("inert", "");

  const close = () => {
    root.unmount();
    place.remove();
    page?.removeAttribute("inert");
    if (before instanceof HTMLElement) before.focus();
  };
  root.render(desk(close));
}
