import { useEffect, useState } from "react";
import { type Garden, LIMITS, type LimitId, midSentence, say, told } from "../../../src/index.ts";
import { useLedger } from "../ledger-state.ts";
import { LimitField } from "./LimitField.tsx";
import { groupOf, LIMIT_GROUPS, type LimitGroup } from "./limit-groups.ts";

/** Every limit, by what it is about. */
export const LimitsSection = ({ garden }: { readonly garden: Garden }) =>
  LIMIT_GROUPS.map(({ group, ids }) => <Group key={group} group={group} ids={ids} garden={garden} />);

interface GroupProps {
  readonly group: LimitGroup;
  readonly ids: readonly LimitId[];
  readonly garden: Garden;
}

function Group({ group, ids, garden }: GroupProps) {
  const wanted = useLedger((s) => s.wantedLimit !== null && groupOf(s.wantedLimit) === group);
  const [open, setOpen] = useState(false);
  // Open in the same turn, for the field inside to take the keyboard; and still open once it has it.
  useEffect(() => {
    if (wanted) setOpen(true);
  }, [wanted]);

  const changed = ids.filter((id) => garden.limits[id] !== undefined);
  return (
    <details
      className="card-section"
      open={open || wanted}
      onToggle={(event) => setOpen(event.currentTarget.open)}
    >
      <summary>
        <span>{say`Limits: ${midSentence(told(group))}`}</span>
        <span className="gist">
          {changed.length === 0
            ? say`${ids.length} at their defaults`
            : changed.map((id) => LIMITS[id].label).join(", ")}
        </span>
      </summary>
      <ul className="limits">
        {ids.map((id) => (
          <LimitField
            key={id}
            id={id}
            own={garden.limits[id]}
            edition={garden.gardener.edition}
            units={garden.units}
          />
        ))}
      </ul>
    </details>
  );
}
