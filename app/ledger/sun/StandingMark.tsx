import type { Standing } from "./sun-standing.ts";

const FILLED: Readonly<Record<Standing, string>> = {
  enough: "M-7 0a7 7 0 1 1 14 0a7 7 0 1 1-14 0z",
  short: "M-7 0a7 7 0 0 0 14 0z",
  under: "",
};

/** A disc that is full, half full or empty. It says nothing to a screen reader: the words stand beside it. */
export const StandingMark = ({ standing }: { readonly standing: Standing }) => (
  <svg className="standing-mark" width="18" height="18" viewBox="-9 -9 18 18" aria-hidden="true">
    <circle r="7" fill="var(--sheet)" stroke="var(--sun)" strokeWidth="1.75" />
    <path d={FILLED[standing]} fill="var(--sun)" />
    {standing === "under" ? (
      <path d="M-4.9 4.9L4.9-4.9" stroke="var(--sun)" strokeWidth="1.75" fill="none" />
    ) : null}
  </svg>
);
