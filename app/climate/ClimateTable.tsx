import { MONTH_NAMES, type ReferenceMonth, say, told, type Units } from "../../src/index.ts";
import { writeNumber } from "../ledger/fields/read-number.ts";
import { TypedField } from "../ledger/fields/TypedField.tsx";
import { COLUMN_IDS, COLUMNS, readCell, unitOf, writeCell } from "./columns.ts";
import { type Draft, withCell } from "./draft.ts";
import { guessWords } from "./guess-words.ts";

interface Props {
  readonly draft: Draft;
  readonly units: Units;
  /** What follows from it, once it is whole. */
  readonly reference: readonly ReferenceMonth[] | null;
  readonly onChange: (draft: Draft) => void;
}

/** A month a row; at its end how much a lawn would draw from the soil on a mean day, and by which method that was told. */
export function ClimateTable({ draft, units, reference, onChange }: Props) {
  return (
    <div className="climate-scroll">
      <table className="climate-table">
        <thead>
          <tr>
            <th scope="col">{say`Month`}</th>
            {COLUMN_IDS.map((column) => (
              <th scope="col" key={column}>
                {told(COLUMNS[column].label)}
                <small>{unitOf(column, units)}</small>
              </th>
            ))}
            <th scope="col">
              {say`Reference evapotranspiration`}
              <small>{units === "us" ? say`in a day` : say`mm a day`}</small>
            </th>
          </tr>
        </thead>
        <tbody>
          {draft.map((row, month) => (
            <tr key={MONTH_NAMES[month]}>
              <th scope="row">{told(MONTH_NAMES[month]!)}</th>
              {COLUMN_IDS.map((column) => (
                <td key={column}>
                  <TypedField
                    bare
                    inputMode="decimal"
                    label={say`${told(COLUMNS[column].label)} in ${told(MONTH_NAMES[month]!)}, ${unitOf(column, units)}`}
                    value={row[column]}
                    write={(kept) => writeCell(column, kept, units)}
                    read={(text) => readCell(column, text, units)}
                    onCommit={(kept) => onChange(withCell(draft, month, column, kept))}
                  />
                </td>
              ))}
              <td className="climate-figure">
                {reference ? <Evaporation month={reference[month]!} units={units} /> : "–"}
              </td>
            </tr>
          ))}
        </tbody>
      </table>
    </div>
  );
}

const MM_PER_INCH = 25.4;

const METHODS: Readonly<Record<ReferenceMonth["method"], string>> = {
  "penman-monteith": "Penman-Monteith",
  hargreaves: "Hargreaves",
};

const Evaporation = ({ month, units }: { readonly month: ReferenceMonth; readonly units: Units }) => (
  <>
    {units === "us" ? writeNumber(month.et0 / MM_PER_INCH, 2) : writeNumber(month.et0, 1)}
    <small>
      {month.method === "penman-monteith" && month.guessed.length > 0
        ? say`${METHODS[month.method]}, ${guessWords(month.guessed)} guessed`
        : METHODS[month.method]}
    </small>
  </>
);
