import type { GroundUnder } from "../../garden/ground-under.ts";
import { groundsUnder, isHard } from "../../garden/ground-under.ts";
import type { Bed } from "../../garden/kinds/bed.ts";
import type { MarkedBed } from "../bed-kinds.ts";
import { type Block, step } from "../flow.ts";
import type { SheetFacts } from "../sheet-facts.ts";

/** What is done first, next and last, of the steps this garden has. */
export function orderOfWorkBlock(facts: SheetFacts, width: number): Block {
  const steps = facts.beds.length === 0 ? [] : stepsOf(facts);
  return { heading: "Order of work", rows: steps.map((words, i) => step(i + 1, words, width)) };
}

function stepsOf(facts: SheetFacts): string[] {
  const { beds, garden, takeoff } = facts;
  const under = groundsUnder(garden);
  const on = (test: (ground: GroundUnder) => boolean) =>
    marks(beds, ({ id }) => (under.get(id) ?? []).some(test));
  const having = (test: (bed: Bed) => boolean) => marks(beds, test);

  const green = on(({ ground }) => ground.cover === "lawn" || ground.cover === "weeds");
  const hard = on(({ ground }) => isHard(ground.cover));
  const mesh = having(({ bottom }) => bottom.mesh !== null);
  const liner = having(({ bottom }) => bottom.liner !== null);
  const boards = having(({ wall }) => wall.made === "boards");
  const layered = having(({ fill }) => fill.way === "layered");
  const mulched = having(({ mulch }) => mulch !== null);
  const stakes = takeoff.beds.some((bed) => bed.stakes > 0);
  const ties = takeoff.beds.some((bed) => bed.ties > 0);
  const paths = takeoff.lines.some(({ part }) => part === "paths");

  const perhaps = (there: string, words: (marks: string) => string) => (there === "" ? [] : [words(there)]);
  return [
    "Have buried services located and marked before anything is driven or dug.",
    "Drive P1 and P2. Tape the corners, string each bed, and prove it by its diagonals.",
    ...perhaps(green, (beds) => `Cut grass and weeds to the ground under ${beds}.`),
    ...perhaps(
      hard,
      (beds) => `${beds} on hard ground: sweep it, see where water runs, and leave gaps for it to leave.`,
    ),
    ...perhaps(
      mesh,
      (beds) => `Lay mesh under ${beds}, lapped and turned up inside the frame, stapled all round.`,
    ),
    ...perhaps(
      liner,
      (beds) => `Line ${beds}; a sheet goes on the sides only, with the bottom left to drain.`,
    ),
    ...perhaps(
      boards,
      (beds) =>
        `Saw by the cut plan, longest pieces first. Build ${beds}: a post in each corner, screws by the list${stakes ? ", stakes along the sides" : ""}${ties ? ", ties across" : ""}. Level the frame.`,
    ),
    ...perhaps(layered, (beds) => `In ${beds} wood and branches first, then twigs and leaves, mix on top.`),
    "Fill in two lifts, water each, let it settle, top up.",
    ...perhaps(mulched, (beds) => `Mulch ${beds} once the plants stand.`),
    ...(paths ? ["Surface the paths last, when no more barrows cross them."] : []),
  ];
}

/** The marks of the beds that it holds for; "all beds" where it holds for all, nothing where for none. */
function marks(beds: readonly MarkedBed[], test: (bed: Bed) => boolean): string {
  const held = beds.filter(({ bed }) => test(bed));
  return held.length === beds.length && beds.length > 1
    ? "all beds"
    : held.map(({ mark }) => mark).join(", ");
}
