import { useEffect, useRef } from "react";
import {
  defaultLimit,
  type Gardener,
  LIMITS,
  type LimitId,
  SAME_LENGTH,
  say,
  type Units,
} from "../../../src/index.ts";
import { WhyLink } from "../../help/WhyLink.tsx";
import { useEditor } from "../../store/use-editor.ts";
import { LengthField } from "../fields/LengthField.tsx";
import { NumberField } from "../fields/NumberField.tsx";
import { RatioField } from "../fields/RatioField.tsx";
import { useLedger } from "../ledger-state.ts";
import { ended, sourceText } from "../snags/SourceLine.tsx";
import { MULTIPLES, writeLimit } from "./write-limit.ts";

interface Props {
  readonly id: LimitId;
  /** The gardener's own; undefined while the default stands. */
  readonly own: number | undefined;
  /** Whose figures stand where the gardener has none. */
  readonly edition: Gardener["edition"];
  readonly units: Units;
}

/** One limit the rules hold the garden to: its value, its default and where that comes from. */
export function LimitField({ id, own, edition, units }: Props) {
  const limit = LIMITS[id];
  const usual = defaultLimit(id, edition);
  const wanted = useLedger((s) => s.wantedLimit === id);
  const place = useRef<HTMLLIElement>(null);

  useEffect(() => {
    if (!wanted) return;
    place.current?.scrollIntoView?.({ block: "center" });
    place.current?.querySelector("input")?.focus();
    useLedger.getState().wantLimit(null);
  }, [wanted]);

  const set = (value: number | null) =>
    useEditor.getState().commit(say`Set the limit: ${limit.label}`, [
      {
        op: "set-limit",
        limit: id,
        value: value === null || isSame(id, value, usual.value) ? null : value,
      },
    ]);

  const common = { label: limit.label, value: own ?? usual.value, onCommit: set };
  return (
    <li className="limit" ref={place} data-own={own !== undefined}>
      <ValueField id={id} {...common} />
      <p className="field-note">
        {own === undefined ? "" : `${say`Default ${writeLimit(id, usual.value, units)}.`} `}
        {ended(sourceText(usual.source))} <WhyLink wanted={{ limit: id }} of={limit.label} />
      </p>
      {own === undefined ? null : (
        <button
          type="button"
          className="link"
          aria-label={say`Put ${limit.label} back to ${writeLimit(id, usual.value, units)}`}
          onClick={() => set(null)}
        >{say`Put the default back`}</button>
      )}
    </li>
  );
}

/** 24 in typed in any unit is the default of 24 in. */
const isSame = (id: LimitId, value: number, usual: number): boolean =>
  LIMITS[id].unit === "mm" ? Math.abs(value - usual) < SAME_LENGTH : value === usual;

interface ValueProps {
  readonly id: LimitId;
  readonly label: string;
  readonly value: number;
  readonly onCommit: (value: number) => void;
}

const MOST_TIMES = 10;

function ValueField({ id, ...field }: ValueProps) {
  const { unit } = LIMITS[id];
  if (MULTIPLES.has(id)) return <NumberField unit={say`times`} least={0} most={MOST_TIMES} {...field} />;
  switch (unit) {
    case "mm":
      return <LengthField {...field} />;
    case "ratio":
      return <RatioField {...field} />;
    case "h":
      return <NumberField unit="h" least={0} most={24} {...field} />;
  }
}
