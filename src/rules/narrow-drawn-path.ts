import { pathStrip } from "../access/barriers.ts";
import { obstaclesOf } from "../access/obstacles.ts";
import { roomToStand } from "../access/standing.ts";
import type { Garden, Gardener } from "../garden/garden.ts";
import type { Path } from "../garden/kinds/path.ts";
import { LIMITS, type Limits } from "../garden/limits.ts";
import { nameOf } from "../garden/name-of.ts";
import type { Op } from "../garden/op.ts";
import { applyOps } from "../garden/operations.ts";
import { overlaps } from "../geometry/gap.ts";
import { midpoint, placed } from "../geometry/vector.ts";
import { formatShort } from "../units/format-length.ts";
import { SAME_LENGTH } from "../units/length.ts";
import { say, word } from "../words/say.ts";
import { defineRule, type Grade } from "./rule.ts";

/** Flags paths drawn narrower than what they are for. */
export const narrowDrawnPath = defineRule({
  id: "narrow-drawn-path",
  grade: "must",
  promise: word("Every drawn path is as wide as what it is used for."),
  why: word("A path that is laid too narrow is laid again, or walked beside."),
  source: LIMITS.kneelingWay.source,
  limits: ["standingRoom", "kneelingWay", "barrowWay", "wheelchairWay"],
  needs: ["garden", "limits", "units"],

  check({ garden, limits, units }) {
    return garden.items.flatMap((item) => {
      if (item.kind !== "path") return [];
      const { asked, grade, purpose } = askedOf(item, garden.gardener, limits);
      if (item.width >= asked - SAME_LENGTH) return [];
      const ops: Op[] = [{ op: "set", id: item.id, changes: { width: asked } }];
      return [
        {
          grade,
          itemIds: [item.id],
          at: [middleOf(item)],
          measured: item.width,
          limit: asked,
          unit: "mm" as const,
          title: say`${nameOf(item)}: ${formatShort(asked - item.width, units)} too narrow ${purpose}`,
          detail: say`It is drawn ${formatShort(item.width, units)} wide; ${formatShort(asked, units)} are needed ${purpose}.`,
          get waysOut() {
            return runsIntoMore(garden, item, ops)
              ? []
              : [{ label: say`Widen to ${formatShort(asked, units)}`, ops }];
          },
        },
      ];
    });
  },
});

interface Asked {
  readonly asked: number;
  readonly grade: Grade;
  readonly purpose: string;
}

/** Whoever cannot pass at all is a must; a main way that only the barrow finds narrow is a should. */
function askedOf({ use, width }: Path, gardener: Gardener, limits: Limits): Asked {
  const body = roomToStand(gardener, limits);
  const purpose = gardener.wheelchair
    ? say`for a wheelchair`
    : gardener.kneeling
      ? say`to kneel`
      : say`to walk`;
  const forBody: Asked = { asked: body, grade: "must", purpose };
  if (use !== "main" || !gardener.barrow || limits.barrowWay <= body) return forBody;
  const asked = limits.barrowWay;
  return { asked, grade: width < body - SAME_LENGTH ? "must" : "should", purpose: say`for a barrow` };
}

function middleOf({ points, at, turn }: Path) {
  const i = Math.floor((points.length - 1) / 2);
  return placed(midpoint(points[i]!, points[i + 1]!), at, turn);
}

/** Whether the path, made wider, would run into something that it keeps clear of now. */
function runsIntoMore(garden: Garden, path: Path, ops: readonly Op[]): boolean {
  const wider = applyOps(garden, ops).items.find(({ id }) => id === path.id);
  if (wider?.kind !== "path") return true;
  const meets = (which: Path) => (ring: Parameters<typeof overlaps>[0]) =>
    pathStrip(which).some((strip) => overlaps(strip, ring));
  return obstaclesOf(garden).some(({ ring }) => meets(wider)(ring) && !meets(path)(ring));
}
