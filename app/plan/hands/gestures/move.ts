import { type ItemId, say, subtract } from "../../../../src/index.ts";
import { tellDone } from "../announce.ts";
import { carry, carryOps } from "../carrying.ts";
import { type Desk, type Gesture, type Hand, tryPreview } from "../gesture.ts";
import { namesOf } from "../names.ts";
import { carriedBy } from "../onto-line.ts";

/** Carries things, and the openings and taps that sit on them, about the plan. */
export function startMove(desk: Desk, ids: ReadonlySet<ItemId>, start: Hand): Gesture {
  const { editor, marks } = desk;
  const { garden } = editor.getState();
  const moving = garden.items.filter(({ id }) => ids.has(id));
  const along = carriedBy(garden, new Set(moving));
  marks.setState({ held: moving.map(({ id }) => id) });
  const letGo = () => marks.setState({ held: [], guides: [] });

  return {
    cursor: "move",
    move(hand) {
      const by = subtract(hand.plan, start.plan);
      const carried = carry(garden, moving, by, hand, editor.getState().view.scale);
      if (tryPreview(desk, carryOps(moving, along, carried))) marks.setState({ guides: carried.guides });
    },
    end() {
      const { draft } = editor.getState();
      letGo();
      if (!draft || moving.every(({ id, at }) => isAt(draft.items.find((item) => item.id === id)?.at, at))) {
        editor.getState().dropPreview();
        return;
      }
      editor.getState().commitPreview(say`Move ${namesOf(moving)}`);
      tellDone(editor, say`${namesOf(moving)} moved`);
    },
    cancel() {
      letGo();
      editor.getState().dropPreview();
    },
  };
}

const isAt = (now: readonly [number, number] | undefined, then: readonly [number, number]): boolean =>
  now !== undefined && now[0] === then[0] && now[1] === then[1];
