import type { Bed, BedWall } from "../garden/kinds/bed.ts";
import { LIMITS } from "../garden/limits.ts";
import { nameOf } from "../garden/name-of.ts";
import { BOARD_SIZES, boardSize } from "../garden/timber-sizes.ts";
import { formatShort } from "../units/format-length.ts";
import { SAME_LENGTH } from "../units/length.ts";
import { say, word } from "../words/say.ts";
import { frameBow } from "./frame-bow.ts";
import { defineRule, type WayOut } from "./rule.ts";

type BoardWall = Extract<BedWall, { made: "boards" }>;
interface Stronger {
  readonly label: string;
  readonly wall: BoardWall;
}

/** From this many times the limit a bowing board is no longer a matter of looks: joints open and the side gives way. */
const GIVES_WAY = 2;

/** Flags board walls that bow too far under wet soil, between the stakes they have. */
export const weakFrame = defineRule({
  id: "weak-frame",
  grade: "should",
  promise: word("The boards of every frame stay straight under wet soil."),
  why: word(
    "Half the span bows a sixteenth as far: one stake in time saves the side. A bowed side pulls its corners open.",
  ),
  source: LIMITS.bow.source,
  limits: ["bow", "stakeEvery"],
  needs: ["beds", "limits", "units"],

  check({ beds, limits, units }) {
    const limit = limits.bow;
    return beds.flatMap((bed) => {
      const { wall } = bed;
      if (wall.made !== "boards") return [];
      const bow = frameBow(bed, wall, limits.stakeEvery);
      if (!bow || bow.deflection <= limit + SAME_LENGTH) return [];
      const [far, span] = [formatShort(bow.deflection, units), formatShort(bow.span, units)];
      const holds = (stronger: BoardWall) =>
        (frameBow(bed, stronger, limits.stakeEvery)?.deflection ?? Infinity) <= limit + SAME_LENGTH;
      return [
        {
          grade: bow.deflection > GIVES_WAY * limit ? ("must" as const) : ("should" as const),
          itemIds: [bed.id],
          at: [bow.at],
          measured: bow.deflection,
          limit,
          unit: "mm" as const,
          title: say`${nameOf(bed)}: its side bows ${far}`,
          detail: say`The lowest ${wall.board} spans ${span} between supports and bows ${far} under wet soil; ${formatShort(limit, units)} is allowed.`,
          waysOut: strongerWalls(wall, bed.already !== null, holds).map(
            (stronger): WayOut => setWall(bed, stronger),
          ),
        },
      ];
    });
  },
});

/** Stakes, a thicker board, or both where neither alone is enough; boards that stand already are not changed. */
function strongerWalls(wall: BoardWall, stands: boolean, holds: (wall: BoardWall) => boolean): Stronger[] {
  const staked: Stronger[] =
    wall.bracing === "none"
      ? [{ label: say`Stake the long sides`, wall: { ...wall, bracing: "stakes" } }]
      : [];
  const board = stands ? null : thickerBoard(wall.board);
  const thicker: Stronger[] = board ? [{ label: say`Use ${board} boards`, wall: { ...wall, board } }] : [];
  const alone = [...staked, ...thicker].filter((stronger) => holds(stronger.wall));
  if (alone.length > 0 || !board || staked.length === 0) return alone;
  const both: Stronger = {
    label: say`Use ${board} boards and stakes`,
    wall: { ...wall, board, bracing: "stakes" },
  };
  return holds(both.wall) ? [both] : [];
}

/** Twice as thick is a beam, not a board. */
const THICKER_BY = 2;

/** The next thicker board of the same height and trade. */
function thickerBoard(name: string): string | null {
  const board = boardSize(name);
  if (!board) return null;
  const thicker = BOARD_SIZES.filter(
    ({ height, system, thickness }) =>
      height === board.height &&
      system === board.system &&
      thickness > board.thickness &&
      thickness <= THICKER_BY * board.thickness,
  );
  return thicker.toSorted((a, b) => a.thickness - b.thickness)[0]?.name ?? null;
}

const setWall = (bed: Bed, { label, wall }: Stronger): WayOut => ({
  label,
  ops: [{ op: "set", id: bed.id, changes: { wall } }],
});
