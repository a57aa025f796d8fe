import { type Garden, say } from "../../../src/index.ts";
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
    throw new RangeError(say`Type the currency’s three letters, such as USD or EUR.`);
  return code;
}

/** @throws RangeError with one sentence that says what was wrong */
export function readDate(text: string): string | null {
  const typed = text.trim();
  if (typed === "") return null;
  const date = new Date(`${typed}T00:00:00Z`);
  const real = !Number.isNaN(date.getTime()) && date.toISOString().startsWith(typed);
  if (!/^\d{4}-\d\d-\d\d$/.test(typed) || !real) {
    throw new RangeError(say`Type a date such as 2027-04-26, or leave it empty.`);
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
  const set = (what: string, changes: Changes) => commit(say`Set ${what}`, [{ op: "set-garden", changes }]);
  const setPrices = (what: string, changes: PriceChanges) => set(what, { prices: changes });

  return (
    <CardSection
      title={say`Units, paper and prices`}
      gist={`${garden.units === "us" ? say`ft-in` : say`metric`}, ${prices.currency}`}
    >
      <ChoiceField
        label={say`Lengths in`}
        value={garden.units}
        choices={[
          { value: "us", label: say`Feet and inches` },
          { value: "metric", label: say`Metres and centimetres` },
        ]}
        onCommit={(units) => set(say`the units`, { units })}
      />
      <ChoiceField
        label={say`Paper`}
        value={garden.paper}
        choices={[
          { value: "letter", label: say`Letter` },
          { value: "a4", label: "A4" },
        ]}
        onCommit={(paper) => set(say`the paper`, { paper })}
      />
      <TypedField
        label={say`Currency`}
        value={prices.currency}
        write={(code) => code}
        read={readCurrency}
        onCommit={(currency) => setPrices(say`the currency`, { currency })}
      />
      <NumberField
        label={say`Reckoned over`}
        unit={say`years`}
        whole
        least={1}
        most={LONGEST_HORIZON}
        value={prices.horizon}
        onCommit={(horizon) => setPrices(say`the years reckoned over`, { horizon })}
      />
      <TextField
        label={say`Own prices are from`}
        value={prices.supplier}
        onCommit={(supplier) => setPrices(say`the supplier`, { supplier })}
      />
      <TypedField
        label={say`Own prices are of`}
        value={prices.asOf}
        write={(date) => date ?? ""}
        read={readDate}
        note={say`a date such as 2027-04-26`}
        onCommit={(asOf) => setPrices(say`the date of prices`, { asOf })}
      />
      <p className="field-note wide">{say`The prices themselves stand under Takeoff, with what is bought at them. The years are those over which cost a year, renewals and walls are compared.`}</p>
    </CardSection>
  );
}
