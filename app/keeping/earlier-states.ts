import { type Garden, type Item, writeGarden } from "../../src/index.ts";
import type { PackedState, Shelf } from "./shelf.ts";
import { countBeds } from "./stored.ts";

const MINUTE = 60_000;
const HOUR = 60 * MINUTE;
const DAY = 24 * HOUR;

/** After the last minutes, of which each state stays, the last one of each hour stays, then of each day. */
const MINUTES = 10 * MINUTE;
const STEPS_BACK: readonly { readonly upTo: number; readonly each: number }[] = [
  { upTo: DAY, each: HOUR },
  { upTo: 60 * DAY, each: DAY },
];

/** Earlier states of one garden: how many at most, and how many bytes. */
const MOST_STATES = 150;
const MOST_BYTES = 6_000_000;
/** However busy the last minutes were, most of the room is for what lies further back. */
const SHARE_OF_MINUTES = 0.4;

/**
 * Which states are no longer worth their room.
 *
 * @param times when there are states of, milliseconds since 1970
 * @param now the time of the latest
 * @param most how many may stay
 */
export function thinnedOut(times: readonly number[], now: number, most = MOST_STATES): number[] {
  const mostOfMinutes = Math.ceil(most * SHARE_OF_MINUTES);
  const taken = new Set<string>();
  const dropped: number[] = [];
  for (const at of [...new Set(times)].sort((a, b) => b - a)) {
    const age = now - at;
    const row = STEPS_BACK.find(({ upTo }) => age < upTo);
    const isRecent = age < MINUTES && taken.size < mostOfMinutes;
    // By the clock, not by age: the hours must not shift under what they hold.
    const place = isRecent ? `${at}` : row && `${row.each}:${Math.floor(at / row.each)}`;
    if (place === undefined || taken.has(place) || taken.size >= most) dropped.push(at);
    else taken.add(place);
  }
  return dropped;
}

export interface State {
  readonly at: number;
  readonly garden: Garden;
  readonly label: string;
}

/**
 * Keeps a state of a garden, and drops those that were thinned out by it. A state that is there already stays.
 * @param inPlaceOf an earlier state of the same step, which goes
 * @throws what the shelf throws
 */
export async function keepState(
  shelf: Shelf,
  id: string,
  { at, garden, label }: State,
  inPlaceOf: number | null = null,
): Promise<void> {
  const known = await shelf.stateTimes(id);
  if (known.includes(at)) return;
  const times = known.filter((time) => time !== inPlaceOf);
  const packed = await packedText(writeGarden(garden));
  const room = Math.max(1, Math.min(MOST_STATES, Math.floor(MOST_BYTES / packed.byteLength)));
  const all = [...times, at];
  const state: PackedState = {
    garden: id,
    at,
    name: garden.name,
    beds: countBeds(garden),
    label,
    packed,
  };
  const drop = thinnedOut(all, Math.max(...all), room);
  if (inPlaceOf !== null) drop.push(inPlaceOf);
  if (!drop.includes(at)) await shelf.putState(state, drop);
}

const through = (bytes: BlobPart, stream: CompressionStream | DecompressionStream): Response =>
  new Response(new Blob([bytes]).stream().pipeThrough(stream));

const packedText = (text: string): Promise<ArrayBuffer> =>
  through(text, new CompressionStream("gzip")).arrayBuffer();

/** The text of the garden in a state; still to be read and checked like any file. */
export const unpackedText = ({ packed }: PackedState): Promise<string> =>
  through(packed, new DecompressionStream("gzip")).text();

/**
 * A garden with the things that are the same in another taken from there, so that going back to an earlier state
 * changes no more than what differs.
 */
export function sharingWith(current: Garden, garden: Garden): Garden {
  const byId = new Map<string, Item>(current.items.map((item) => [item.id, item]));
  const items = garden.items.map((item) => {
    const own = byId.get(item.id);
    return own && isSame(own, item) ? own : item;
  });
  return { ...garden, items };
}

const isSame = (a: unknown, b: unknown): boolean => {
  if (Object.is(a, b)) return true;
  if (typeof a !== "object" || typeof b !== "object" || a === null || b === null) return false;
  const [own, other] = [Object.entries(a), Object.keys(b)];
  return (
    own.length === other.length &&
    own.every(([key, value]) => Object.hasOwn(b, key) && isSame(value, Reflect.get(b, key)))
  );
};
