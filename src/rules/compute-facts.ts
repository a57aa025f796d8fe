import { access } from "../access/access.ts";
import { placeOf } from "../access/place.ts";
import type { Garden } from "../garden/garden.ts";
import { groundsUnder } from "../garden/ground-under.ts";
import { limitsOf } from "../garden/limits.ts";
import { dripPlan } from "../irrigation/drip-plan.ts";
import { bedsInSun } from "../sun/beds-in-sun.ts";
import { takeoff } from "../takeoff/takeoff.ts";
import type { Facts } from "./facts.ts";

type Computing = { readonly [K in keyof Facts]: (garden: Garden) => Facts[K] };

/** How each fact follows from the garden. */
const COMPUTE: Computing = {
  garden: (garden) => garden,
  items: ({ items }) => items,
  beds: ({ items }) => items.filter((item) => item.kind === "bed"),
  site: ({ site }) => site,
  gardener: ({ gardener }) => gardener,
  limits: limitsOf,
  units: ({ units }) => units,
  grounds: groundsUnder,
  place: placeOf,
  access: (garden) => access(garden),
  takeoff: (garden) => takeoff(garden),
  drip: (garden) => dripPlan(garden),
  sun: bedsInSun,
};

const FACT_NAMES = Object.keys(COMPUTE) as readonly (keyof Facts)[];

/**
 * All facts about a garden, each worked out when it is first asked for and then kept.
 * @param known facts that the caller has already, about this very garden
 */
export function factsAbout(garden: Garden, known: Partial<Facts> = {}): Facts {
  const found = new Map<keyof Facts, unknown>(Object.entries(known) as [keyof Facts, unknown][]);
  const facts = {};
  for (const name of FACT_NAMES) {
    const get = () => {
      if (!found.has(name)) found.set(name, COMPUTE[name](garden));
      return found.get(name);
    };
    Object.defineProperty(facts, name, { enumerable: true, get });
  }
  return facts as Facts;
}

/** Only the facts a rule has declared, so that a hidden dependency cannot work. */
export const only = <K extends keyof Facts>(facts: Facts, needs: readonly K[]): Pick<Facts, K> =>
  Object.fromEntries(needs.map((name) => [name, facts[name]])) as Pick<Facts, K>;

/** The facts about a garden that one rule needs. */
export const computeFacts = <K extends keyof Facts>(garden: Garden, needs: readonly K[]): Pick<Facts, K> =>
  only(factsAbout(garden), needs);
