import { wallSize } from "../garden/frame.ts";
import type { Garden } from "../garden/garden.ts";
import type { Bed, BedWall } from "../garden/kinds/bed.ts";
import type { Source } from "../garden/source.ts";
import { boardSize } from "../garden/timber-sizes.ts";
import { INCH, type Units } from "../units/length.ts";
import { say } from "../words/say.ts";
import { asNew } from "./as-new.ts";
import { bedQuantities } from "./bed-quantities.ts";
import { lifeOf, lifeOfTimber, renewals } from "./lives.ts";
import { priceOf } from "./price-table.ts";
import { total } from "./purchase.ts";
import { wallsOf } from "./reckoned.ts";
import { settingsOf } from "./settings.ts";
import { buildingIn } from "./stages.ts";
import { TIMBERS } from "./timbers.ts";

/** What the walls of a garden would cost, were all of them made of one thing. */
export interface WallChoice {
  /** A row of the timber table, or a kind of wall. */
  readonly id: string;
  readonly label: string;
  readonly kind: "timber" | "wall";
  /** All framed beds are made of it now. */
  readonly now: boolean;
  readonly first: number;
  readonly life: readonly [shortest: number, longest: number];
  /** Renewed within the horizon, each time the middle of its life is over. */
  readonly times: number;
  /** First cost and renewals over the horizon. */
  readonly perYear: number;
  readonly besideFood: "fit" | "with-care" | "unfit";
  readonly note: string;
  /** Of the life. */
  readonly source: Source;
}

type Way = Pick<WallChoice, "id" | "label" | "kind" | "besideFood" | "note" | "life" | "source"> & {
  readonly wallOf: (bed: Bed) => BedWall;
};
type Framed = Exclude<BedWall, { made: "mound" }>;
type BoardWall = Extract<BedWall, { made: "boards" }>;

/**
 * Timbers and kinds of wall compared for this garden: the walls of all its framed beds as if each stood nowhere yet
 * and all were of the one thing, as high as they are drawn, to the nearest course above. What costs least a year comes
 * first; the limits to what may be near food are told, not applied.
 * @returns none for a garden without a framed bed
 */
export function compareWalls(garden: Garden): readonly WallChoice[] {
  const beds = buildingIn(asNew(garden), "all").beds.filter(({ wall }) => wall.made !== "mound");
  if (beds.length === 0) return [];
  const settings = settingsOf(garden);
  const { horizon } = garden.prices;
  const pattern =
    beds.map(({ wall }) => wall).find((wall) => wall.made === "boards") ?? usualBoards(garden.units);
  const choices = [...timberWays(pattern), ...otherWays(garden.units)].map((way): WallChoice => {
    const { wallOf, ...about } = way;
    const walled = beds.map((bed) => bedQuantities({ ...bed, wall: wallOf(bed) }, settings));
    const { purchases } = wallsOf(walled, garden, settings);
    const first = cents(
      total(purchases, ({ good, quantity }) => priceOf(good, garden.prices).price * quantity),
    );
    const times = renewals(about.life, horizon);
    const now = beds.every(({ wall }) => isOf(wall, about));
    return { ...about, now, first, times, perYear: cents((first * (1 + times)) / horizon) };
  });
  return choices.sort((a, b) => a.perYear - b.perYear);
}

const isOf = (wall: BedWall, { kind, id }: Pick<WallChoice, "kind" | "id">): boolean =>
  kind === "timber" ? wall.made === "boards" && wall.timber === id : wall.made === id;

const timberWays = (pattern: BoardWall): Way[] =>
  TIMBERS.map(({ id, label, besideFood, note }) => {
    const { years, source } = lifeOfTimber(id);
    const wallOf = ({ wall }: Bed): BedWall => ({ ...asBoards(wall, pattern), timber: id });
    return { id, label, kind: "timber", besideFood, note, life: years, source, wallOf };
  });

/** A wall of boards stays as it is but for its timber; any other becomes one of the garden's boards, as high at least. */
function asBoards(wall: BedWall, pattern: BoardWall): BoardWall {
  if (wall.made === "boards") return wall;
  const board = boardSize(pattern.board)?.height ?? 1;
  return { ...pattern, courses: Math.max(1, Math.ceil(wallSize(wall).height / board - 1e-6)) };
}

const usualBoards = (units: Units): BoardWall => ({
  made: "boards",
  board: units === "us" ? "2x6" : "47x150",
  timber: "",
  courses: 1,
  corner: "ends-between-sides",
  bracing: "stakes",
  cornerPosts: true,
  capRail: null,
});

/** Sizes in common use; a wall of the kind that a bed has already keeps its own. */
function otherWays(units: Units): Way[] {
  const mm = (inches: number, metric: number) => (units === "us" ? inches * INCH : metric);
  const way = (
    made: Framed["made"],
    lasting: string,
    label: string,
    besideFood: WallChoice["besideFood"],
    note: string,
    wallOf: (height: number) => BedWall,
  ): Way => {
    const { years, source } = lifeOf(lasting);
    return {
      ...{ id: made, label, kind: "wall", besideFood, note, life: years, source },
      wallOf: ({ wall }) => (wall.made === made ? wall : wallOf(wallSize(wall).height)),
    };
  };
  const block = { unitLength: mm(16, 400), unitHeight: mm(8, 200), thickness: mm(8, 200) };
  return [
    way(
      "metal",
      "metal",
      say`Metal panels`,
      "fit",
      say`Galvanised or aluminium-zinc; edges want a cap.`,
      (height) => ({
        made: "metal",
        height,
        thickness: mm(1 / 16, 1),
      }),
    ),
    way(
      "masonry",
      "masonry",
      say`Concrete blocks, dry`,
      "fit",
      say`Thick: takes soil and reach; level ground.`,
      (height) => ({
        made: "masonry",
        ...block,
        courses: Math.max(1, Math.ceil(height / block.unitHeight - 1e-6)),
      }),
    ),
    way(
      "fabric",
      "fabric-bed",
      say`Fabric beds`,
      "fit",
      say`Dry out fast; the sun wears them.`,
      (height) => ({
        made: "fabric",
        height,
      }),
    ),
  ];
}

const cents = (amount: number): number => Math.round(amount * 100) / 100;
