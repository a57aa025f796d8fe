import { lazy, Suspense } from "react";
import { type Garden, type Item, type ItemId, nameOf } from "../../../src/index.ts";
import { shownGarden } from "../../store/editor.ts";
import { useEditor } from "../../store/use-editor.ts";
import { useLedger } from "../ledger-state.ts";
import { GardenCard } from "./GardenCard.tsx";
import { KIND_WORDS } from "./kind-words.ts";
import { ManyCard } from "./ManyCard.tsx";

// The fields bring the tables of crops and timbers with them, which the first sight of the page does without.
const ItemCard = lazy(async () => ({ default: (await import("./ItemCard.tsx")).ItemCard }));
const YardCard = lazy(async () => ({ default: (await import("./YardCard.tsx")).YardCard }));

/** The foot of the ledger: the card of what is selected. */
export function CardArea() {
  const garden = useEditor(shownGarden);
  const selection = useEditor((s) => s.selection);
  const yardSelected = useEditor((s) => s.yardSelected);
  const items = selected(garden, selection);
  const [only] = items;

  return (
    <section className="card" aria-label="Selected" id="card" tabIndex={-1}>
      <CardHead items={items} yardSelected={yardSelected} />
      <div className="card-body">
        <Suspense fallback={<p className="quiet">Fetching the card…</p>}>
          {yardSelected ? <YardCard /> : null}
          {items.length === 1 && only ? <ItemCard key={only.id} item={only} /> : null}
          {items.length > 1 ? <ManyCard items={items} /> : null}
        </Suspense>
        {items.length === 0 && !yardSelected ? <GardenCard /> : null}
      </div>
    </section>
  );
}

const selected = (garden: Garden, selection: ReadonlySet<ItemId>): readonly Item[] =>
  garden.items.filter(({ id }) => selection.has(id));

interface HeadProps {
  readonly items: readonly Item[];
  readonly yardSelected: boolean;
}

function CardHead({ items, yardSelected }: HeadProps) {
  const cardOpen = useLedger((s) => s.cardOpen);
  const { title, kind } = headOf(items, yardSelected);
  const toggle = () => {
    const { openCard, stop, drawTo } = useLedger.getState();
    openCard(!cardOpen);
    if (!cardOpen && stop === "low") drawTo("half");
  };
  return (
    <header className="card-head">
      <h2>{title}</h2>
      <span>{kind}</span>
      <button type="button" className="button card-toggle" aria-expanded={cardOpen} onClick={toggle}>
        {cardOpen ? "Close card" : "Open card"}
      </button>
    </header>
  );
}

function headOf(
  items: readonly Item[],
  yardSelected: boolean,
): { readonly title: string; readonly kind: string } {
  if (yardSelected) return { title: "The yard", kind: "outline · selected" };
  const [only] = items;
  if (!only) return { title: "The garden", kind: "nothing selected" };
  if (items.length > 1) return { title: `${items.length} things`, kind: "selected" };
  const words = only.kind === "bed" && only.legs !== null ? "table bed" : KIND_WORDS[only.kind];
  return { title: nameOf(only), kind: `${words} · selected` };
}
