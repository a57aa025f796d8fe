import { applyOps, EXAMPLES, freshId, type Garden } from "../../src/index.ts";

const [northern] = EXAMPLES;

/** Beds with a dozen crops each: more tasks than any one page holds. */
export function crowded(count: number): Garden {
  let garden = northern.garden;
  const bed = garden.items.find((item) => item.kind === "bed")!;
  const plantings = garden.items.flatMap((item) => (item.kind === "bed" ? item.plantings : []));
  for (let i = 0; i < count; i++) {
    const id = freshId(garden, "bed");
    const day = (planting: number) =>
      `${String(1 + ((i + planting) % 12)).padStart(2, "0")}-${String(1 + ((i * 3) % 28)).padStart(2, "0")}`;
    garden = applyOps(garden, [
      { op: "add", item: { ...bed, id } },
      {
        op: "set",
        id,
        changes: {
          plantings: plantings.map((one, at) => ({ ...one, from: day(at), until: null, patch: null })),
        },
      },
    ]);
  }
  return garden;
}
