import type { Garden } from "../../../src/index.ts";
import { useEditor } from "../../store/use-editor.ts";
import { CardSection } from "../card/CardSection.tsx";
import { ChoiceField } from "../fields/ChoiceField.tsx";
import { NumberField } from "../fields/NumberField.tsx";
import { TextField } from "../fields/TextField.tsx";
import { TypedField } from "../fields/TypedField.tsx";

const LONGEST_HORIZON = 100;

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

type PriceChanges = Partial<Omit<Garden["prices"], "own">>;

/** How lengths are shown, what is printed on, whose prices count, and over how many years. */
export function BuyingSection({ garden }: { readonly garden: Garden }) {
  const commit = useEditor((s) => s.commit);
  const { prices } = garden;
  const set = (what: string, changes: Changes) => commit(`Set ${what}`, [{ op: "set-garden", changes }]);
  const setPrices = (what: string, changes: PriceChanges) => set(what, { prices: changes });

  return (
    <CardSection
      title="Units, paper and prices"
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
      <TypedField
        label="Currency"
        value={prices.currency}
        write={(code) => code}
        read={readCurrency}
        onCommit={(currency) => setPrices("the currency", { currency })}
      />
      <NumberField
        label="Reckoned over"
        unit="years"
        whole
        least={1}
        most={LONGEST_HORIZON}
        value={prices.horizon}
        onCommit={(horizon) => setPrices("the years reckoned over", { horizon })}
      />
      <TextField
        label="Own prices are from"
        value={prices.supplier}
        onCommit={(supplier) => setPrices("the supplier", { supplier })}
      />
      <TypedField
        label="Own prices are of"
        value={prices.asOf}
        write={(date) => date ?? ""}
        read={readDate}
        note="a date such as 2027-04-26"
        onCommit={(asOf) => setPrices("the date of prices", { asOf })}
      />
      <p className="field-note wide">
        The prices themselves stand under Takeoff, with what is bought at them. The years are those over which
        cost a year, renewals and walls are compared.
      </p>
    </CardSection>
  );
}
