import { type FocusEvent, lazy, Suspense, useEffect } from "react";
import { type Item, nameOf, say, told } from "../../../src/index.ts";
import { Fallback } from "../../Fallback.tsx";
import { shownGarden } from "../../store/editor.ts";
import { useEditor } from "../../store/use-editor.ts";
import { useLedger } from "../ledger-state.ts";
import { useNarrow } from "../use-narrow.ts";
import { focusFirstField } from "./first-field.ts";
import { GardenCard } from "./GardenCard.tsx";
import { KIND_WORDS } from "./kind-words.ts";
import { ManyCard } from "./ManyCard.tsx";

// The fields bring the tables of crops and timbers with them, which the first sight of the page does without.
const ItemCard = lazy(async () => ({ default: (await import("./ItemCard.tsx")).ItemCard }));
const SelectionActions = lazy(async () => ({
  default: (await import("../../plan/hands/SelectionActions.tsx")).SelectionActions,
}));
const YardCard = lazy(async () => ({ default: (await import("./YardCard.tsx")).YardCard }));

/** The foot of the ledger: the card of what is selected. */
export function CardArea() {
  const garden = useEditor(shownGarden);
  const selection = useEditor((s) => s.selection);
  const yardSelected = useEditor((s) => s.yardSelected);
  const narrow = useNarrow();
  const cardOpen = useLedger((s) => s.cardOpen);
  const folded = useLedger((s) => s.cardFolded);
  const leaf = useEditor((s) => s.leaf);
  const items = garden.items.filter(({ id }) => selection.has(id));

  const selected = items.length > 0 || yardSelected;
  // With nothing selected the card has little to say, and a leaf that is being read needs the room.
  const shown = narrow ? cardOpen : selected ? !folded : leaf === "snags";

  // Whoever asks for the card by keyboard gets it, wherever the sheet stands.
  const onFocus = (event: FocusEvent<HTMLElement>) => {
    if (event.target !== event.currentTarget) return;
    if (narrow) showCard();
    else useLedger.getState().foldCard(false);
  };

  return (
    <section
      className="card"
      aria-label={say`Selected`}
      id="card"
      tabIndex={-1}
      data-selected={selected}
      onFocus={onFocus}
    >
      <CardHead items={items} yardSelected={yardSelected} />
      {shown ? (
        <div className="card-body">
          <Fallback what={say`The card`} about={items.map(({ id }) => id).join()}>
            <CardBody items={items} yardSelected={yardSelected} />
          </Fallback>
        </div>
      ) : null}
    </section>
  );
}

function showCard(): void {
  const { openCard, stop, drawTo } = useLedger.getState();
  openCard(true);
  if (stop === "low") drawTo("half");
}

interface CardProps {
  readonly items: readonly Item[];
  readonly yardSelected: boolean;
}

function CardBody({ items, yardSelected }: CardProps) {
  const [first] = items;
  if (!first && !yardSelected) return <GardenCard />;
  return (
    <>
      <Suspense>{first ? <SelectionActions /> : null}</Suspense>
      <Suspense fallback={<p className="quiet">{say`Fetching the card…`}</p>}>
        {yardSelected ? <YardCard /> : null}
        {items.length === 1 && first ? <ItemCard key={first.id} item={first} /> : null}
        {items.length > 1 ? <ManyCard items={items} /> : null}
        <KeyboardToFields />
      </Suspense>
    </>
  );
}

/** Stands with the fields: once they are there, a keyboard that waits at the card goes on to the first of them. */
function KeyboardToFields() {
  useEffect(() => {
    const card = document.getElementById("card");
    if (card && document.activeElement === card) focusFirstField(card);
  }, []);
  return null;
}

function CardHead({ items, yardSelected }: CardProps) {
  const cardOpen = useLedger((s) => s.cardOpen);
  const folded = useLedger((s) => s.cardFolded);
  const { title, kind } = headOf(items, yardSelected);
  const toggle = () => (cardOpen ? useLedger.getState().openCard(false) : showCard());
  return (
    <header className="card-head">
      <h2>{title}</h2>
      <span>{kind}</span>
      {items.length > 0 || yardSelected ? (
        <button
          type="button"
          className="button small card-fold"
          aria-expanded={!folded}
          onClick={() => useLedger.getState().foldCard(!folded)}
        >
          {folded ? say`Unfold` : say`Fold`}
        </button>
      ) : null}
      <button type="button" className="button card-toggle" aria-expanded={cardOpen} onClick={toggle}>
        {cardOpen ? say`Close card` : say`Open card`}
      </button>
    </header>
  );
}

function headOf(
  items: readonly Item[],
  yardSelected: boolean,
): { readonly title: string; readonly kind: string } {
  if (yardSelected) return { title: say`The yard`, kind: say`outline · selected` };
  const [only] = items;
  if (!only) return { title: say`The garden`, kind: say`nothing selected` };
  if (items.length > 1) return { title: say`${items.length} things`, kind: say`selected` };
  const words = only.kind === "bed" && only.legs !== null ? say`table bed` : told(KIND_WORDS[only.kind]);
  return { title: nameOf(only), kind: say`${words} · selected` };
}
