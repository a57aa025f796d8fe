import { type Garden, LIMITS } from "../../../src/index.ts";
import { useLedger } from "../ledger-state.ts";
import { LimitField } from "./LimitField.tsx";
import { groupOf, LIMIT_GROUPS } from "./limit-groups.ts";

/** Every limit, by what it is about. */
export function LimitsSection({ garden }: { readonly garden: Garden }) {
  const wanted = useLedger((s) => s.wantedLimit);
  const wantedGroup = wanted ? groupOf(wanted) : null;
  return LIMIT_GROUPS.map(({ group, ids }) => {
    const changed = ids.filter((id) => garden.limits[id] !== undefined);
    return (
      <details className="card-section" key={group} open={group === wantedGroup || undefined}>
        <summary>
          <span>Limits: {group.toLowerCase()}</span>
          <span className="gist">
            {changed.length === 0
              ? `${ids.length} at their defaults`
              : changed.map((id) => LIMITS[id].label).join(", ")}
          </span>
        </summary>
        <ul className="limits">
          {ids.map((id) => (
            <LimitField key={id} id={id} own={garden.limits[id]} units={garden.units} />
          ))}
        </ul>
      </details>
    );
  });
}
