import { describe, expect, it } from "vitest";
import { setOut } from "../../src/access/set-out.ts";
import { standingPieces } from "../../src/access/standing.ts";
import { waysOf } from "../../src/access/ways.ts";
import { roomAt } from "../../src/access/ways-disc.ts";
import { locator, reachable } from "../../src/access/ways-locate.ts";
import type { Begin, WaysMesh } from "../../src/access/ways-mesh.ts";
import { meshWhileDragged } from "../../src/access/ways-while-dragged.ts";
import { widthThrough } from "../../src/access/ways-width.ts";
import type { Garden, ItemOf, Point } from "../../src/index.ts";
import { smallGarden } from "../helpers/random-gardens.ts";
import { denseScene, rowsScene, seeded, tangledScene, withMoved } from "../helpers/scenes.ts";

/** What is carried from move to move tells the same as a mesh worked out afresh. */

/** The same garden, of which nothing is known yet. */
const afresh = (garden: Garden): Garden => ({ ...garden, yard: [...garden.yard], items: [...garden.items] });

const ROOM = 457;

function expectSame(garden: Garden, where: string): void {
  const [carried, fresh] = [waysOf(garden, "dragged"), waysOf(afresh(garden), "dragged")];
  const [canGetTo, couldGetTo] = [carried.reachableAt(ROOM), fresh.reachableAt(ROOM)];
  for (const item of garden.items) {
    if (item.kind !== "bed") continue;
    const [way, other] = [carried.toBed(item.id), fresh.toBed(item.id)];
    for (const from of ["fromGate", "fromDoor"] as const) {
      expect(way[from]?.width, `${where}: ${item.id} ${from}`).toBeCloseTo(
        other[from]?.width ?? Number.NaN,
        3,
      );
      expect(way[from]?.narrowest?.width).toBeCloseTo(other[from]?.narrowest?.width ?? Number.NaN, 3);
    }
    for (const { body } of standingPieces(item, garden, ROOM))
      expect(canGetTo(body), `${where}: ${item.id} at ${body.map(Math.round)}`).toBe(couldGetTo(body));
  }
}

/** Room of all discs, and the width through all edges. */
function discsAndWidths(mesh: WaysMesh): { readonly rooms: Float64Array; readonly widths: Float64Array } {
  return {
    rooms: mesh.radii.map((_, t) => roomAt(mesh, t)),
    widths: mesh.widths.map((_, edge) => (mesh.halfedges[edge]! < 0 ? 0 : widthThrough(mesh, edge))),
  };
}

function firstSteps(mesh: WaysMesh, starts: readonly Point[]): readonly [number, Begin][] {
  const steps: [number, Begin][] = [];
  const locate = locator(mesh);
  for (const at of starts) setOut(mesh, at, locate, (t, narrowest) => steps.push([t, narrowest]));
  return steps;
}

const withNothingKnown = (mesh: WaysMesh): WaysMesh => ({
  ...mesh,
  discs: new Float64Array(mesh.discs.length).fill(Number.NaN),
  ofSamples: new Float64Array(mesh.widths.length).fill(Number.NaN),
  widths: new Float64Array(mesh.widths.length).fill(Number.NaN),
  carried: null,
});

const scenes = [
  { name: "dense", garden: denseScene(14, 3), spread: 300 },
  { name: "rows", garden: rowsScene(12, 2), spread: 500 },
  { name: "tangled", garden: tangledScene(9, 4), spread: 1500 },
];

describe("ways while a bed is dragged", () => {
  it.each(scenes)("are those of a garden seen for the first time: $name", ({ garden, spread }) => {
    const random = seeded(5);
    let now = garden;
    for (let move = 0; move < 24; move++) {
      // A few moves of one bed, then another; every third ends on a whole millimetre.
      const id = `bed-${1 + (Math.floor(move / 8) % 5)}`;
      const by: Point = [(random() - 0.5) * spread, (random() - 0.5) * spread];
      now = withMoved(now, id, move % 3 === 0 ? [Math.round(by[0]), Math.round(by[1])] : by);
      expectSame(now, `move ${move} of ${id}`);
    }
  });

  it.each(scenes)("measure nothing otherwise than anew: $name", ({ garden, spread }) => {
    const random = seeded(6);
    const probes = Array.from({ length: 900 }, (_, i): Point => [400 * (i % 30), 400 * Math.floor(i / 30)]);
    let now = garden;
    for (let move = 0; move < 12; move++) {
      now = withMoved(now, "bed-5", [(random() - 0.5) * spread, (random() - 0.5) * spread]);
      const ways = waysOf(now, "dragged");
      const { mesh } = ways;
      const anew = withNothingKnown(mesh);
      expect(discsAndWidths(mesh)).toEqual(discsAndWidths(anew));
      const [known, asked] = [reachable(mesh, ways.widest!, ROOM), reachable(anew, ways.widest!, ROOM)];
      expect(probes.map(known)).toEqual(probes.map(asked));
    }
  });

  it("measure nothing otherwise than anew in small crowded gardens", () => {
    for (let seed = 10; seed < 24; seed++) {
      const random = seeded(seed);
      let now = smallGarden(seed, { beds: 4, apart: -1 });
      const id = now.items.findLast(({ kind }) => kind === "bed")!.id;
      for (let move = 0; move < 5; move++) {
        now = withMoved(now, id, [(random() - 0.5) * 700, (random() - 0.5) * 700]);
        const { mesh, entrances } = waysOf(now, "dragged");
        const anew = withNothingKnown(mesh);
        const where = `seed ${seed}, move ${move}`;
        const starts = entrances.flatMap((entrance) => entrance.starts.map(({ at }) => at));
        expect(firstSteps(mesh, starts), where).toEqual(firstSteps(anew, starts));
        expect(discsAndWidths(mesh), where).toEqual(discsAndWidths(anew));
      }
    }
  });

  it("are the same where beds stand in line, touch and lie over each other", () => {
    const random = seeded(8);
    const onGrid = ({ at, ...bed }: ItemOf<"bed">): ItemOf<"bed"> => ({
      ...bed,
      at: [600 * Math.round(at[0] / 600), 600 * Math.round(at[1] / 600)],
      turn: 0,
      shape: { type: "rectangle", width: 1200, length: 2400 },
    });
    const rows = rowsScene(9, 1);
    let now: Garden = {
      ...rows,
      items: rows.items.map((item) => (item.kind === "bed" ? onGrid(item) : item)),
    };
    for (let move = 0; move < 24; move++) {
      const by = () => 300 * Math.round((random() - 0.5) * 10);
      now = withMoved(now, `bed-${1 + Math.floor(move / 8)}`, [by(), by()]);
      expectSame(now, `move ${move}`);
    }
  });

  it("are asked again of a move that came before", () => {
    let now = rowsScene(12, 2);
    const gardens = [1, 2, 3, 4].map((move) => {
      now = withMoved(now, "bed-5", [40 * move, -25]);
      waysOf(now, "dragged");
      return now;
    });
    for (const garden of gardens.reverse()) expectSame(garden, "back");
  });

  it("are carried: what stays is not looked at again", () => {
    let now = rowsScene(12, 2);
    for (const by of [10, 20, 30]) {
      now = withMoved(now, "bed-5", [by, 0]);
      waysOf(now, "dragged").reachableAt(ROOM);
    }
    const { carried, discs } = meshWhileDragged(withMoved(now, "bed-5", [5, 5]));
    const kept = carried?.touched.filter((flag) => flag === 0).length ?? 0;
    expect(kept).toBeGreaterThan(0.6 * (carried?.touched.length ?? Infinity));
    expect(
      discs.filter((_, i) => i % 3 === 2).filter((radius) => !Number.isNaN(radius)).length,
    ).toBeGreaterThan(100);
  });

  it("are worked out afresh where a bed stands partly outside the yard", () => {
    const garden = rowsScene(4, 2);
    const out = [1, 2, 3].reduce((now) => {
      const next = withMoved(now, "bed-1", [-900, 0]);
      waysOf(next, "dragged");
      return next;
    }, garden);
    expect(meshWhileDragged(out).carried).toBeNull();
    expectSame(out, "outside");
  });
});
