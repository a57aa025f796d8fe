import type { GroundUnder } from "../../garden/ground-under.ts";
import { groundsUnder, isHard } from "../../garden/ground-under.ts";
import type { Bed } from "../../garden/kinds/bed.ts";
import { say } from "../../words/say.ts";
import type { MarkedBed } from "../bed-kinds.ts";
import { type Block, step } from "../flow.ts";
import type { SheetFacts } from "../sheet-facts.ts";

/** What is done first, next and last, of the steps this garden has. */
export function orderOfWorkBlock(facts: SheetFacts, width: number): Block {
  const steps = facts.beds.length === 0 ? [] : [...stagesStep(facts), ...stepsOf(facts)];
  return { heading: say`Order of work`, rows: steps.map((words, i) => step(i + 1, words, width)) };
}

/** Which beds come in which stage, where this sheet is of all of them. */
function stagesStep({ stage, stages, beds, allBeds }: SheetFacts): string[] {
  if (stages.length < 2) return [];
  if (stage !== "all") {
    const before = allBeds.filter(({ bed }) => bed.stage < stage);
    return before.length > 0 ? [say`${marked(before)} stand from earlier stages: work round them.`] : [];
  }
  const turns = stages.flatMap((one) => {
    const own = beds.filter(({ bed }) => bed.stage === one);
    return own.length > 0 ? [say`stage ${one}: ${marked(own)}`] : [];
  });
  return [say`In stages, each with a sheet of its own. ${capital(turns.join("; "))}.`];
}

const marked = (beds: readonly MarkedBed[]): string => beds.map(({ mark }) => mark).join(", ");
const capital = (words: string): string => words.charAt(0).toUpperCase() + words.slice(1);

function stepsOf(facts: SheetFacts): string[] {
  const { beds, toBuild, garden, takeoff } = facts;
  const under = groundsUnder(garden);
  // The ground is made ready, meshed and lined only where a frame is still to be set on it.
  const on = (test: (ground: GroundUnder) => boolean) =>
    marks(beds, (bed) => isNew(bed) && (under.get(bed.id) ?? []).some(test));
  const having = (test: (bed: Bed) => boolean) => marks(beds, test);
  const isNew = ({ id, already }: Bed) => already === null && toBuild.some(({ bed }) => bed.id === id);
  const isBuilt = ({ id }: Bed) => toBuild.some(({ bed }) => bed.id === id);
  const raised = marks(beds, (bed) => bed.already !== null && isBuilt(bed));

  const green = on(({ ground }) => ground.cover === "lawn" || ground.cover === "weeds");
  const hard = on(({ ground }) => isHard(ground.cover));
  const mesh = having((bed) => isNew(bed) && bed.bottom.mesh !== null);
  const liner = having((bed) => isNew(bed) && bed.bottom.liner !== null);
  const boards = having((bed) => bed.wall.made === "boards" && isBuilt(bed));
  const posts = beds.some(({ bed }) => bed.wall.made === "boards" && bed.wall.cornerPosts);
  const capped = having((bed) => bed.wall.made === "boards" && bed.wall.capRail !== null && isBuilt(bed));
  const filled = takeoff.beds.some(({ orderVolumeL }) => orderVolumeL > 0);
  const layered = having(({ fill }) => fill.way === "layered");
  const mulched = having(({ mulch }) => mulch !== null);
  const stakes = takeoff.beds.some((bed) => bed.stakes > 0);
  const ties = takeoff.beds.some((bed) => bed.ties > 0);
  const paths = takeoff.lines.some(({ part }) => part === "paths");

  const perhaps = (there: string, words: (marks: string) => string) => (there === "" ? [] : [words(there)]);
  return [
    say`Have buried services located and marked before anything is driven or dug.`,
    ...(toBuild.length > 0
      ? [say`Drive P1 and P2. Tape the corners, string each bed, and prove it by its diagonals.`]
      : []),
    ...perhaps(green, (beds) => say`Cut grass and weeds to the ground under ${beds}.`),
    ...perhaps(
      hard,
      (beds) => say`${beds} on hard ground: sweep it, see where water runs, and leave gaps for it to leave.`,
    ),
    ...perhaps(
      mesh,
      (beds) => say`Lay mesh under ${beds}, lapped and turned up inside the frame, stapled all round.`,
    ),
    ...perhaps(
      liner,
      (beds) => say`Line ${beds}; a sheet goes on the sides only, with the bottom left to drain.`,
    ),
    ...perhaps(
      boards,
      (beds) =>
        say`Saw by the cut plan, longest pieces first. Build ${beds}: ${[...(posts ? [say`a post in each corner`] : []), say`screws by the list`, ...(stakes ? [say`stakes along the sides`] : []), ...(ties ? [say`ties across`] : [])].join(", ")}. Level the frame.`,
    ),
    ...perhaps(
      raised,
      (beds) =>
        say`Raise ${beds}: new posts in the corners, through old and new courses, carry what is added.`,
    ),
    ...perhaps(capped, (beds) => say`Lay the cap rail on ${beds}, mitred as the cut plan says.`),
    ...perhaps(
      layered,
      (beds) => say`In ${beds} wood and branches first, then twigs and leaves, mix on top.`,
    ),
    ...(filled ? [say`Fill in two lifts, water each, let it settle, top up.`] : []),
    ...perhaps(mulched, (beds) => say`Mulch ${beds} once the plants stand.`),
    ...(paths ? [say`Surface the paths last, when no more barrows cross them.`] : []),
  ];
}

/** The marks of the beds that it holds for; "all beds" where it holds for all, nothing where for none. */
function marks(beds: readonly MarkedBed[], test: (bed: Bed) => boolean): string {
  const held = beds.filter(({ bed }) => test(bed));
  return held.length === beds.length && beds.length > 1
    ? say`all beds`
    : held.map(({ mark }) => mark).join(", ");
}
