import type { Garden } from "../garden/garden.ts";
import { difference, regionsOf } from "../geometry/clip.ts";
import { contains } from "../geometry/ring.ts";
import type { Region } from "../geometry/types.ts";
import { surroundingsOf } from "./surroundings.ts";

const known = new WeakMap<
  Garden["items"],
  { readonly yard: Garden["yard"]; readonly regions: readonly Region[] }
>();

/**
 * The ground of a yard that can be walked on: the yard less everything that stands in it.
 *
 * A tree takes its trunk, not the shade of its crown; a fence or wall is open at its gates; what is drawn on the ground
 * (paths, patches, ground kept clear, the swing of doors and gates) can be walked on and takes nothing.
 *
 * @returns regions with their holes; several where the yard is parted, none where nothing is left of it
 */
export function freeGround(garden: Pick<Garden, "items" | "yard">): readonly Region[] {
  const before = known.get(garden.items);
  if (before?.yard === garden.yard) return before.regions;
  const { obstacles, yard } = surroundingsOf(garden);
  const rings = difference(
    [yard],
    obstacles.map(({ ring }) => ring),
  );
  const regions = regionsOf(rings, contains);
  known.set(garden.items, { yard: garden.yard, regions });
  return regions;
}
