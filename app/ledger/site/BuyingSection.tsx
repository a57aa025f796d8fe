import type { Garden } from "../../../src/index.ts";
import { useEditor } from "../../store/use-editor.ts";
import { CardSection } from "../card/CardSection.tsx";
import { ChoiceField } from "../fields/ChoiceField.tsx";
import { LengthField } from "../fields/LengthField.tsx";
import { TypedField } from "../fields/TypedField.tsx";
import { StockField } from "./StockField.tsx";

/** @throws RangeError with one sentence that says what was wrong */
export function readCurrency(text: string): string {
  const code = text.trim().toUpperCase();
  if (!/^[A-Z]{3}$/.test(code))
    throw new RangeError("Type the currency’s three letters, such as USD or EUR.");
  return code;
}

/** @throws RangeError with one sentence that says what was wrong */
export function readDate(text: string): string | null {
  const typed = text.trim();
  if (typed === "") return null;
  const date = new Date(`${typed}T00:00:00Z`);
  const real = !Number.isNaN(date.getTime()) && date.toISOString().startsWith(typed);
  if (!/^\d{4}-\d\d-\d\d$/.test(typed) || !real) {
    throw new RangeError("Type a date such as 2027-04-26, or leave it empty.");
  }
  return typed;
}

type Changes = Extract<
  Parameters<ReturnType<typeof useEditor.getState>["commit"]>[1][number],
  { op: "set-garden" }
>["changes"];

/** How lengths are shown, what is printed on, and what is on sale. */
export function BuyingSection({ garden }: { readonly garden: Garden }) {
  const commit = useEditor((s) => s.commit);
  const { cutting, prices } = garden;
  const set = (what: string, changes: Changes) => commit(`Set ${what}`, [{ op: "set-garden", changes }]);
  const setPrices = (what: string, changes: Partial<Pick<Garden["prices"], "currency" | "asOf">>) =>
    set(what, { prices: { currency: prices.currency, asOf: prices.asOf, ...changes } });

  return (
    <CardSection
      title="Units, paper, saw and prices"
      gist={`${garden.units === "us" ? "ft-in" : "metric"}, ${prices.currency}`}
    >
      <ChoiceField
        label="Lengths in"
        value={garden.units}
        choices={[
          { value: "us", label: "Feet and inches" },
          { value: "metric", label: "Metres and centimetres" },
        ]}
        onCommit={(units) => set("the units", { units })}
      />
      <ChoiceField
        label="Paper"
        value={garden.paper}
        choices={[
          { value: "letter", label: "Letter" },
          { value: "a4", label: "A4" },
        ]}
        onCommit={(paper) => set("the paper", { paper })}
      />
      <LengthField
        label="The saw takes"
        may="zero"
        value={cutting.kerf}
        note="with each cut"
        onCommit={(kerf) => set("the saw’s cut", { cutting: { ...cutting, kerf } })}
      />
      <StockField
        lengths={cutting.stockLengths}
        units={garden.units}
        onCommit={(stockLengths) => set("board lengths", { cutting: { ...cutting, stockLengths } })}
      />
      <TypedField
        label="Currency"
        value={prices.currency}
        write={(code) => code}
        read={readCurrency}
        onCommit={(currency) => setPrices("the currency", { currency })}
      />
      <TypedField
        label="Own prices are of"
        value={prices.asOf}
        write={(date) => date ?? ""}
        read={readDate}
        note="a date such as 2027-04-26; the prices themselves stand under Takeoff"
        onCommit={(asOf) => setPrices("the date of prices", { asOf })}
      />
    </CardSection>
  );
}
