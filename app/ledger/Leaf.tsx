import { type ComponentType, lazy, Suspense } from "react";
import { say } from "../../src/index.ts";
import { Fallback } from "../Fallback.tsx";
import type { Leaf as LeafName } from "../store/editor.ts";
import { useEditor } from "../store/use-editor.ts";
import { PANEL_ID, tabId } from "./leaves.ts";
import { SnagsLeaf } from "./snags/SnagsLeaf.tsx";

const TakeoffLeaf = lazy(async () => ({ default: (await import("./takeoff/TakeoffLeaf.tsx")).TakeoffLeaf }));
const SunLeaf = lazy(async () => ({ default: (await import("./sun/SunLeaf.tsx")).SunLeaf }));
const YearRoundLeaf = lazy(async () => ({
  default: (await import("./year/YearRoundLeaf.tsx")).YearRoundLeaf,
}));
const SiteLeaf = lazy(async () => ({ default: (await import("./site/SiteLeaf.tsx")).SiteLeaf }));

const SHOWN: Readonly<Record<LeafName, ComponentType>> = {
  snags: SnagsLeaf,
  takeoff: TakeoffLeaf,
  sun: SunLeaf,
  "year-round": YearRoundLeaf,
  site: SiteLeaf,
};

/** The leaf that is turned to. */
export function Leaf() {
  const leaf = useEditor((s) => s.leaf);
  const Shown = SHOWN[leaf];
  return (
    <section className="leaf" role="tabpanel" id={PANEL_ID} aria-labelledby={tabId(leaf)}>
      <Fallback what={say`This leaf`} about={leaf}>
        <Suspense fallback={<p className="leaf-text quiet">{say`Turning the leaf…`}</p>}>
          <Shown />
        </Suspense>
      </Fallback>
    </section>
  );
}
