import { formatHours, type ItemId, listed, nameOf, type SunCost, say } from "../../../src/index.ts";
import { Filled, slot } from "../../language/Filled.tsx";
import { useEditor } from "../../store/use-editor.ts";
import { CardSection } from "../card/CardSection.tsx";
import { TOLD } from "./shade-words.ts";
import { useSunAnswer } from "./use-sun-answer.ts";

const ask: Parameters<typeof useSunAnswer<readonly SunCost[]>>[1] = (questions, garden) =>
  questions.sunCosts(garden);

/** What each thing in the yard costs in sun. */
export const SunCosts = () => (
  <CardSection title={say`What takes the sun`} gist={say`thing by thing`} costly>
    <Costs />
  </CardSection>
);

function Costs() {
  const items = useEditor((s) => s.garden.items);
  const selection = useEditor((s) => s.selection);
  const { answer: costs, fresh, problem } = useSunAnswer(true, ask);
  if (problem) return <p className="wide">{say`It could not be worked out: ${problem}.`}</p>;
  if (!costs) return <p className="wide quiet">{say`Reckoning…`}</p>;
  const names = new Map(items.map((item) => [item.id, nameOf(item)]));
  const told = costs.flatMap((cost) => {
    const [name, words] = [names.get(cost.id), costWords(cost, names)];
    return name && words ? [{ id: cost.id, name, words }] : [];
  });
  if (told.length === 0)
    return <p className="wide">{say`Nothing in the yard takes sun from a bed or the open ground.`}</p>;
  return (
    <ul className="wide sun-costs" data-fresh={fresh}>
      {told.map(({ id, name, words }) => (
        <li key={id}>
          <Filled
            text={say`${slot(0)} takes ${words}.`}
            put={[
              <button
                key="taker"
                type="button"
                className="link"
                aria-pressed={selection.has(id)}
                onClick={() => useEditor.getState().select([id])}
              >
                {name}
              </button>,
            ]}
          />
        </li>
      ))}
    </ul>
  );
}

/** "1.3 h from Salads and 0.4 h from Herbs, 0.2 h from the open ground"; null where all of it is lost in rounding. */
export function costWords({ yard, beds }: SunCost, names: ReadonlyMap<ItemId, string>): string | null {
  const fromBeds = beds.flatMap(({ id, hours }) => {
    const name = names.get(id);
    return name !== undefined && hours >= TOLD ? [say`${formatHours(hours)} from ${name}`] : [];
  });
  const fromGround = yard >= TOLD ? [say`${formatHours(yard)} from the open ground`] : [];
  const parts = [...fromBeds, ...fromGround];
  return parts.length === 0 ? null : listed(parts);
}
