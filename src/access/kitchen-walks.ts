import type { Garden } from "../garden/garden.ts";
import { limitsOf } from "../garden/limits.ts";
import { type Entrance, entrancesOf } from "./entrances.ts";
import { type Routes, walksFrom } from "./routes.ts";

/** Shortest walks to the beds from the kitchen door; from any door where none is marked as the kitchen's. */
export const kitchenWalks = (garden: Garden): Routes =>
  walksFrom(kitchensOf(entrancesOf(garden)), garden, limitsOf(garden).standingRoom);

function kitchensOf(entrances: readonly Entrance[]): readonly Entrance[] {
  const doors = entrances.filter(({ kind }) => kind === "door");
  const kitchens = doors.filter(({ kitchen }) => kitchen);
  return kitchens.length > 0 ? kitchens : doors;
}
