import { type GroundUnder, isHard } from "../garden/ground-under.ts";
import type { Bed } from "../garden/kinds/bed.ts";
import type { GroundFacts } from "../garden/kinds/ground.ts";
import type { Limits } from "../garden/limits.ts";
import type { Point } from "../geometry/types.ts";
import { told, word } from "../words/say.ts";
import type { WayOut } from "./rule.ts";

type Animal = Exclude<GroundFacts["burrowing"], "none">;

export interface Burrower {
  readonly animal: Animal;
  /** Widest mesh that keeps it out, mm. */
  readonly mesh: number;
  readonly at: Point;
}

const ANIMALS: Readonly<Record<Animal, string>> = {
  gopher: word("gophers"),
  mole: word("moles"),
  vole: word("voles"),
  rat: word("rats"),
};

export const animalsWord = (animal: Animal): string => told(ANIMALS[animal]);

const meshAgainst = (animal: Animal, limits: Limits): number =>
  animal === "gopher" || animal === "mole" ? limits.meshForGophers : limits.meshForVoles;

/** Who could burrow up into a bed: of several, the one that asks for the finest mesh; null where nobody can. */
export function burrowerUnder(bed: Bed, grounds: readonly GroundUnder[], limits: Limits): Burrower | null {
  if (bed.legs !== null) return null;
  const all = grounds.flatMap(({ ground, at }): Burrower[] =>
    ground.burrowing === "none" || isHard(ground.cover)
      ? []
      : [{ animal: ground.burrowing, mesh: meshAgainst(ground.burrowing, limits), at }],
  );
  // A gardener who sets the mesh to nothing asks for none.
  return all.filter(({ mesh }) => mesh > 0).toSorted((a, b) => a.mesh - b.mesh)[0] ?? null;
}

export const withMesh = (bed: Bed, opening: number, label: string): WayOut => ({
  label,
  ops: [{ op: "set", id: bed.id, changes: { bottom: { ...bed.bottom, mesh: { opening } } } }],
});
