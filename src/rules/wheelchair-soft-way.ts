import type { WayGround } from "../access/types.ts";
import type { ItemId } from "../garden/fields.ts";
import type { Garden } from "../garden/garden.ts";
import type { Limits } from "../garden/limits.ts";
import { nameOf } from "../garden/name-of.ts";
import { freshId, newItem } from "../garden/new-item.ts";
import { published } from "../garden/source.ts";
import { say, word } from "../words/say.ts";
import { defineRule, type WayOut } from "./rule.ts";
import { listedOrCounted } from "./words.ts";

/** Flags ways to beds over ground that wheels sink into. */
export const wheelchairSoftWay = defineRule({
  id: "wheelchair-soft-way",
  grade: "must",
  promise: word("The ways to the beds are firm and stable under a wheelchair."),
  why: word(
    "Small front wheels dig into bark, loose gravel, wet lawn and bare soil. Guidance for a private yard.",
  ),
  source: published(
    "2010 ADA Standards for Accessible Design, 302.1: stable, firm, slip resistant; which surfaces are is common practice",
  ),
  needs: ["garden", "access", "limits"],

  check({ garden, access, limits }) {
    const soft = (access.wheelchair?.ground ?? []).filter(({ firm }) => !firm);
    return [...groupedByGround(soft)].map(([on, places]) => {
      const item = garden.items.find(({ id }) => id === on);
      const names = places.map(({ bed }) => nameOf(garden.items.find(({ id }) => id === bed)!));
      return {
        itemIds: item ? [item.id, ...places.map(({ bed }) => bed)] : places.map(({ bed }) => bed),
        at: places.map(({ at }) => at),
        measured: 0,
        limit: 1,
        unit: "count" as const,
        title: say`${item ? nameOf(item) : say`The ground of the yard`} is too soft for a wheelchair`,
        detail: say`The way to ${listedOrCounted(names, "beds")} goes over it; paving, firm gravel or a deck is needed.`,
        get waysOut() {
          return item ? firmed(item.id, item.kind) : pathsAlong(garden, places, limits);
        },
      };
    });
  },
});

function groupedByGround(places: readonly WayGround[]): Map<ItemId | null, WayGround[]> {
  const groups = new Map<ItemId | null, WayGround[]>();
  for (const place of places) groups.set(place.on, [...(groups.get(place.on) ?? []), place]);
  return groups;
}

const firmed = (id: ItemId, kind: string): WayOut[] => [
  {
    label: say`Lay firm gravel on it`,
    ops: [
      { op: "set", id, changes: kind === "path" ? { surface: "firm-gravel" } : { cover: "firm-gravel" } },
    ],
  },
];

/** A firm path along each of the ways, as wide as a wheelchair way. */
function pathsAlong(garden: Garden, places: readonly WayGround[], limits: Limits): WayOut[] {
  let grown = garden;
  const ops = places.map(({ route }) => {
    const id = freshId(grown, "path");
    const plain = newItem("path", { id, at: [0, 0], units: garden.units });
    const item = {
      ...plain,
      turn: 0,
      points: route.points,
      width: limits.wheelchairWay,
      surface: "firm-gravel" as const,
    };
    // Behind everything else: beds stay in front of what is laid under them.
    grown = { ...grown, items: [item as Garden["items"][number], ...grown.items] };
    return { op: "add" as const, item: item as Garden["items"][number], index: 0 };
  });
  return [
    {
      label: places.length === 1 ? say`Lay a firm path along the way` : say`Lay firm paths along the ways`,
      ops,
    },
  ];
}
